package commonsheet.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.compare.CellFigures;
import commonsheet.compare.Condition;
import commonsheet.compare.Figure;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.Origin;
import commonsheet.compare.Requirement;
import commonsheet.compare.Shortlist;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TerminalShortlistTest {
  private static final Condition CONDITION = Condition.usual(Load.constant(4).withPeak(10));
  private static final Requirement BOAT = new Requirement(16, 40, 2, 4, 2, 2, 0.15, 8.0);

  @ParameterizedTest
  @ValueSource(ints = {60, 80, 100, 160})
  void nothingIsWiderThanTheTerminal(int width) throws IOException {
    for (String line : text(BOAT, width).split("\n")) {
      assertTrue(Wrapping.width(line) <= width, line);
    }
  }

  @Test
  void theQuestionTheAnswerAndWhatStandsBehindIt() throws IOException {
    String text = text(BOAT, 100);
    List<String> parts =
        List.of(
            "Cells at 4 A with a peak of 10 A on each cell, down to 3 V, at 23 °C",
            "Each cell must be rated for at least 10 A: the peak, shared.",
            "1 of 2 cells carries it. Ranked by delivered energy per mass, most first.",
            "1  Heron 26     carries          20    +100",
            "2  Bittern <50> near miss       9.5",
            "Near miss",
            "rated 9.5 A, asked 10 A: 5 % too little",
            "2.40~",
            "~ between the curves",
            "All of 2 packs of 4s2p together",
            "How the figures were got",
            "between c1 and c2",
            "What cannot be set side by side",
            "The cells are of different forms",
            "Sources",
            "tarn-heron-26.pdf",
            Caution.TEXT.substring(0, 60));
    int at = 0;
    for (String part : parts) {
      String plain = part.replaceAll(" +", " ");
      int found = text.replaceAll(" +", " ").indexOf(plain, at);
      assertTrue(found >= at, part + " in " + text);
      at = found;
    }
  }

  @Test
  void twoCellsOfOneNameAreToldApart() throws IOException {
    CellFigures one = cell(20);
    Shortlist shortlist =
        Shortlist.ofFigures(List.of(one, one), CONDITION, null, Measure.DELIVERED_ENERGY);
    StringBuilder text = new StringBuilder();
    TerminalShortlist.write(shortlist, 100, text);
    assertTrue(text.toString().contains("Heron 26 (1)"), text.toString());
  }

  @Test
  void aBadNameCannotBreakTheTable() throws IOException {
    String text = text(BOAT, 100);
    assertEquals(-1, text.indexOf('\t'));
    assertTrue(text.contains("=Fen|Energy* Co."), "as printed, in one line");
  }

  private static String text(Requirement requirement, int width) throws IOException {
    CellFigures near =
        new CellFigures(
            Cells.bittern(),
            CONDITION,
            Map.of(Measure.CURRENT_RATING, known(9.5), Measure.MASS, known(1395)));
    Shortlist shortlist =
        Shortlist.ofFigures(
            List.of(near, cell(20)), CONDITION, requirement, Measure.DELIVERED_SPECIFIC_ENERGY);
    StringBuilder text = new StringBuilder();
    TerminalShortlist.write(shortlist, width, text);
    return text.toString();
  }

  private static CellFigures cell(double rating) {
    Figure delivered =
        new Figure(
            2.4,
            2.38,
            2.42,
            Origin.INTERPOLATED,
            List.of("c1", "c2"),
            List.of("between c1 and c2"),
            false);
    return new CellFigures(
        Cells.heron(),
        CONDITION,
        Map.of(
            Measure.CURRENT_RATING,
            known(rating),
            Measure.DELIVERED_CAPACITY,
            delivered,
            Measure.MASS,
            known(45)));
  }

  private static Figure known(double value) {
    return new Figure(value, null, null, Origin.STATED, List.of("s1"), List.of(), false);
  }
}
