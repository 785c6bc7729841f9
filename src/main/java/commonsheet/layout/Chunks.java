package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Parts a line that says several things of one kind: "Charge 0 to 45 °C, discharge −20 to 60 °C",
 * "3C continuous, 5C pulse", "1C at 25 °C, 0.5C at 5 °C". A comma within a bracket or a number
 * parts nothing, and neither does one before a figure of another kind, which is a condition.
 */
final class Chunks {
  private static final String SEPARATORS = ",;\uFF0C\uFF1B\u3001";

  /** A label within a line has no more words than this. Common practice, no source. */
  private static final int LONGEST_LABEL_WORDS = 5;

  private final Figures parser;
  private final Vocabulary vocabulary;

  Chunks(Figures parser, Vocabulary vocabulary) {
    this.parser = parser;
    this.vocabulary = vocabulary;
  }

  /** The parts of a piece; the piece itself where it says one thing. */
  List<Passage> of(Passage piece) {
    String text = piece.text();
    List<Figure> figures = parser.find(text);
    List<Passage> chunks = new ArrayList<>();
    int start = 0;
    int depth = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '(' || c == '\uFF08' ? 1 : c == ')' || c == '\uFF09' ? -1 : 0;
      int place = i;
      boolean separates =
          SEPARATORS.indexOf(c) >= 0
              && depth <= 0
              && figures.stream().noneMatch(f -> f.start() < place && f.end() > place);
      if (separates && startsAnother(text, figures, start, i + 1)) {
        chunks.add(piece.part(start, i));
        start = i + 1;
      }
    }
    chunks.add(piece.part(start, text.length()));
    return chunks.stream().filter(chunk -> !chunk.isBlank()).toList();
  }

  /** Whether what follows a separator has a label with a colon, or a figure of the first's kind. */
  private boolean startsAnother(String text, List<Figure> figures, int from, int at) {
    Dimension before = kind(figures, from, at);
    if (before == null) {
      return false;
    }
    if ((before == Dimension.CHARGE || before == Dimension.ENERGY)
        && !hasLabel(text, figures, at)) {
      return false; // "Typ. 2600 mAh, min. 2500 mAh at 0.2 C" share what follows.
    }
    int end = nextSeparator(text, figures, at);
    boolean sameKind = kind(figures, at, end) == before && saysMore(text, figures, at, end);
    return hasLabel(text, figures, at) || (sameKind && !Naming.isSentence(text));
  }

  /**
   * Whether a part of the text has a word or a condition of its own: "46 g, 48 g" are two values of
   * one thing.
   */
  private static boolean saysMore(String text, List<Figure> figures, int from, int to) {
    long inside = figures.stream().filter(f -> f.start() >= from && f.end() <= to).count();
    return inside > 1
        || IntStream.range(from, to)
            .filter(i -> Character.isLetter(text.charAt(i)))
            .anyMatch(
                i ->
                    figures.stream()
                        .filter(f -> f.qualifier() == null)
                        .noneMatch(f -> f.start() <= i && i < f.end()));
  }

  /** The kind of the first figure with a unit in a part of the text; null where there is none. */
  private static Dimension kind(List<Figure> figures, int from, int to) {
    return figures.stream()
        .filter(f -> f.start() >= from && f.end() <= to && f.unit() != null)
        .map(f -> f.unit().dimension())
        .map(d -> d == Dimension.RATE ? Dimension.CURRENT : d)
        .findFirst()
        .orElse(null);
  }

  private static int nextSeparator(String text, List<Figure> figures, int from) {
    for (int i = from; i < text.length(); i++) {
      int place = i;
      if (SEPARATORS.indexOf(text.charAt(i)) >= 0
          && figures.stream().noneMatch(f -> f.start() < place && f.end() > place)) {
        return i;
      }
    }
    return text.length();
  }

  /** Whether known words, or a time ("3 months:"), and a colon follow. */
  private boolean hasLabel(String text, List<Figure> figures, int at) {
    int colon = Math.max(text.indexOf(':', at), text.indexOf('\uFF1A', at));
    if (colon < 0) {
      return false;
    }
    String label = text.substring(at, colon);
    boolean figure =
        figures.stream()
            .anyMatch(
                f ->
                    f.start() >= at
                        && f.start() - at < 3
                        && f.end() <= colon
                        && colon - f.end() < 3);
    return figure
        || (Tokens.of(label).size() <= LONGEST_LABEL_WORDS
            && vocabulary.coverage(label, vocabulary.hits(label)) > 0.5);
  }
}
