package commonsheet.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The notes of all figures of a shortlist, told once: a note behind the figures that it is about,
 * and what is said of several cells behind all of them.
 */
final class FigureNotes {
  /** What is said of so many cells is said once, before what is said of each. */
  private static final int SEVERAL = 3;

  /** Cells and figures of a note, by the note. */
  private final Map<String, Map<String, Set<String>>> figures = new LinkedHashMap<>();

  private final Set<String> cells = new LinkedHashSet<>();

  /** Adds the notes of one figure of a cell. */
  void add(String cell, String figure, List<String> notes) {
    cells.add(cell);
    for (String note : notes) {
      figures
          .computeIfAbsent(note, n -> new LinkedHashMap<>())
          .computeIfAbsent(cell, c -> new LinkedHashSet<>())
          .add(figure);
    }
  }

  /** A sentence or more for cells together, then one line per cell of which more is to be said. */
  List<String> lines() {
    Map<String, Map<String, List<String>>> shared = new LinkedHashMap<>();
    Map<String, Map<String, List<String>>> own = new LinkedHashMap<>();
    cells.forEach(cell -> own.put(cell, new LinkedHashMap<>()));
    figures.forEach((note, about) -> sort(note, alike(about), shared, own));
    List<String> lines = new ArrayList<>();
    shared.forEach((of, notes) -> lines.add(of + ": " + joined(notes) + "."));
    own.forEach(
        (cell, notes) -> {
          if (!notes.isEmpty()) {
            lines.add(cell + ": " + joined(notes) + ".");
          }
        });
    return lines;
  }

  private void sort(
      String note,
      Map<String, List<String>> alike,
      Map<String, Map<String, List<String>>> shared,
      Map<String, Map<String, List<String>>> own) {
    alike.forEach(
        (subject, of) -> {
          if (of.size() >= SEVERAL) {
            add(shared.computeIfAbsent(names(of), n -> new LinkedHashMap<>()), subject, note);
          } else {
            of.forEach(cell -> add(own.get(cell), subject, note));
          }
        });
  }

  private static void add(Map<String, List<String>> notes, String subject, String note) {
    notes.computeIfAbsent(subject, s -> new ArrayList<>()).add(note);
  }

  /** The cells of one note by the figures that it is about there. */
  private static Map<String, List<String>> alike(Map<String, Set<String>> about) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    about.forEach(
        (cell, names) ->
            alike
                .computeIfAbsent(String.join(", ", names) + ": ", s -> new ArrayList<>())
                .add(cell));
    return alike;
  }

  private String names(List<String> of) {
    List<String> others = cells.stream().filter(cell -> !of.contains(cell)).toList();
    if (others.isEmpty()) {
      return "All";
    }
    return others.size() < of.size()
        ? "All but " + String.join(", ", others)
        : String.join(", ", of);
  }

  private static String joined(Map<String, List<String>> notes) {
    List<String> parts = new ArrayList<>();
    notes.forEach((subject, said) -> parts.add(subject + String.join(", ", said)));
    return String.join("; ", parts);
  }
}
