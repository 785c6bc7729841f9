package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Printed;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The notes of a report's figures, each sentence once, numbered from 1 in order of mention. */
final class Footnotes {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

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
   * Why figures are not known, or in doubt: each sentence once, after the cells that it is about.
   */
  static List<String> ofGaps(Report report, Collection<Measure> measures) {
    Map<String, Set<String>> about = new LinkedHashMap<>();
    for (ReportedCell cell : report.cells()) {
      for (Measure measure : measures) {
        Figure figure = cell.figure(measure);
        if (!figure.isKnown() || figure.unsure()) {
          for (String note : figure.notes()) {
            about
                .computeIfAbsent(Printed.clean(note), n -> new LinkedHashSet<>())
                .add(cell.shortName());
          }
        }
      }
    }
    List<String> told = new ArrayList<>();
    about.forEach((note, cells) -> told.add(String.join(", ", cells) + ": " + note));
    return told;
  }
}
