package commonsheet.export;

import commonsheet.compare.CellFigures;
import commonsheet.compare.Figure;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Source;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Where the figures of a cell stand: the sheet, its revision, and the pages used. */
public final class SheetSource {
  private SheetSource() {}

  /** Such as {@code Ellerbeck Zellen EB21700-48, revision 3, 2026-02-01; sheet.pdf, p. 1-2}. */
  public static String of(CellFigures cell) {
    CellRecord record = cell.record();
    Source source = record.source();
    List<String> parts = new ArrayList<>();
    if (record.cell() != null) {
      add(parts, "", record.cell().maker());
    }
    if (source == null) {
      return parts.isEmpty() ? "not known" : parts.get(0);
    }
    add(parts, "", source.title());
    add(parts, "", source.document());
    add(parts, "revision ", source.revision());
    add(parts, "", source.date());
    add(parts, "", source.file());
    add(parts, "", source.where());
    add(parts, "seen ", source.when());
    List<Integer> pages = pages(cell);
    if (!pages.isEmpty()) {
      parts.add("p. " + PageRanges.text(pages));
    }
    return String.join(", ", parts);
  }

  /** The pages that statements and curves behind the figures stand on, ascending. */
  public static List<Integer> pages(CellFigures cell) {
    Set<String> used = new HashSet<>();
    for (Figure figure : cell.figures().values()) {
      used.addAll(figure.from());
    }
    TreeSet<Integer> pages = new TreeSet<>();
    for (Statement statement : cell.record().statements()) {
      add(pages, used.contains(statement.id()) ? statement.evidence() : null);
    }
    for (Curve curve : cell.record().curves()) {
      add(pages, used.contains(curve.id()) ? curve.evidence() : null);
    }
    return List.copyOf(pages);
  }

  private static void add(Set<Integer> pages, Evidence evidence) {
    if (evidence != null && evidence.page() != null) {
      pages.add(evidence.page());
    }
  }

  private static void add(List<String> parts, String before, String text) {
    String clean = Printed.clean(text);
    if (!clean.isEmpty()) {
      parts.add(before + clean);
    }
  }
}
