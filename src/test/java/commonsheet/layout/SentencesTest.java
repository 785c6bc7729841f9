package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Which part each figure of a sentence plays: {@code sentences.txt} has the sentences. */
class SentencesTest {
  private final Vocabulary vocabulary = new Vocabulary();

  SentencesTest() {
    for (String code : List.of("en", "de", "es", "fr", "zh", "ja")) {
      vocabulary.addPhrases(Resources.language(code).phrases());
    }
  }

  private Sentences sentences(String text) {
    return new Sentences(vocabulary, new Figures(new FigureParser(NumberStyle.of(text))));
  }

  @TestFactory
  Stream<DynamicTest> everyFigureHasItsPart() throws IOException {
    List<String> cases;
    try (InputStream in = SentencesTest.class.getResourceAsStream("/layout/sentences.txt")) {
      cases = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
    return cases.stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(line -> DynamicTest.dynamicTest(line, () -> holds(line)));
  }

  private void holds(String line) {
    String[] sides = line.split(" => ");
    String text = sides[0];
    Direction row = Direction.UNKNOWN;
    for (Direction direction : List.of(Direction.CHARGE, Direction.DISCHARGE)) {
      String mark = "[" + direction.name().toLowerCase(java.util.Locale.ROOT) + "] ";
      if (text.startsWith(mark)) {
        row = direction;
        text = text.substring(mark.length());
      }
    }
    assertEquals(sides[1], inShort(text, sentences(text).read(text, row)));
  }

  /** The two ends of a window are told with the window's text; their number is shown instead. */
  private static String inShort(String text, List<Told> told) {
    return told.stream()
        .map(t -> printed(text, t.figure()) + " " + t.part())
        .collect(Collectors.joining("; "));
  }

  private static String printed(String text, Figure figure) {
    String printed = text.substring(figure.start(), figure.end()).trim();
    boolean window =
        figure.unit().dimension() == Dimension.VOLTAGE
            && figure.value() != null
            && printed.contains(" to ");
    return window ? figure.value() + " V" : printed;
  }

  @Test
  void aFigureWithoutAUnitPlaysNoPart() {
    String text = "see clause 4.2, discharge at 0.2C";
    assertEquals(
        List.of(Told.Part.DISCHARGE_CURRENT),
        sentences(text).read(text, Direction.UNKNOWN).stream().map(Told::part).toList());
  }

  @Test
  void aSentenceWithoutFiguresTellsNothing() {
    String text = "Charge and discharge as agreed.";
    assertEquals(List.of(), sentences(text).read(text, Direction.CHARGE));
  }

  @Test
  void aWordIntroducesTheFigureAfterItOnly() {
    String text = "standard discharge current 0.52 A, cut-off 2.5 V";
    List<Figure> figures = new FigureParser(NumberStyle.DECIMAL_POINT).find(text);
    assertTrue(sentences(text).introducedBy(text, figures.get(0), "standard"));
    assertFalse(sentences(text).introducedBy(text, figures.get(1), "standard"));
  }
}
