package commonsheet.layout;

import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The figures in the texts of one sheet; a text is looked at from several sides and parsed once.
 */
final class Figures {
  private final FigureParser parser;
  private final Map<String, List<Figure>> known = new HashMap<>();

  Figures(FigureParser parser) {
    this.parser = parser;
  }

  /** All figures of a text, left to right. */
  List<Figure> find(String text) {
    return known.computeIfAbsent(text, parser::find);
  }
}
