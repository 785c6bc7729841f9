package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Printed;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The notes of a report's figures, each sentence once, numbered from 1 in order of mention. */
final class Footnotes {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Report report;

  Footnotes(Report report) {
    this.report = report;
  }

  /** The numbers of a figure's notes; notes seen for the first time get the next numbers. */
  List<Integer> numbers(Figure figure) {
    return figure.notes().stream()
        .map(Printed::clean)
        .map(note -> numbers.computeIfAbsent(note, n -> numbers.size() + 1))
        .toList();
  }

  /** All notes numbered so far, in order. */
  List<String> texts() {
    return List.copyOf(numbers.keySet());
  }

  /**
   * The notes of some measures, told by measure and cell: {@code Delivered energy — EB-48, HM-29:
   * between the curves at 5 A and 10 A}.
   */
  List<String> byCell(Collection<Measure> measures) {
    List<String> told = new ArrayList<>();
    Map<String, List<String>> about = new LinkedHashMap<>();
    for (ReportedCell cell : report.cells()) {
      for (Measure measure : measures) {
        for (String note : cell.figure(measure).notes()) {
          List<String> cells = about.computeIfAbsent(Printed.clean(note), n -> new ArrayList<>());
          if (!cells.contains(cell.shortName())) {
            cells.add(cell.shortName());
          }
        }
      }
    }
    about.forEach((note, cells) -> told.add(String.join(", ", cells) + ": " + note));
    return told;
  }
}
