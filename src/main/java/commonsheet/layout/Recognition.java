package commonsheet.layout;

import commonsheet.sheet.Cell;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What of a sheet layouts are recognised by: the words of its first pages and its tables' rows. */
final class Recognition {
  /** A maker's name and the kind of document stand on the title page or the one after it. */
  private static final int FIRST_PAGES = 2;

  private final String text;
  private final List<Set<String>> rows = new ArrayList<>();
  private final List<Set<String>> columns = new ArrayList<>();

  Recognition(Sheet sheet) {
    String words =
        sheet.pages().stream()
            .limit(FIRST_PAGES)
            .flatMap(page -> page.words().stream())
            .map(Word::text)
            .collect(Collectors.joining(" "));
    this.text = " " + Tokens.key(words) + " ";
    for (Page page : sheet.pages()) {
      for (Table table : page.tables()) {
        rows.addAll(texts(table, Cell::row));
        columns.addAll(texts(table, Cell::column));
      }
    }
  }

  private static Collection<Set<String>> texts(Table table, Function<Cell, Integer> place) {
    return table.cells().stream()
        .collect(
            Collectors.groupingBy(
                place, Collectors.mapping(cell -> Tokens.key(cell.text()), Collectors.toSet())))
        .values();
  }

  /** What the rule asks for and the sheet has not, in words; empty where the rule fits. */
  List<String> missing(LayoutRule.Recognise wanted) {
    List<String> missing = new ArrayList<>();
    for (String each : wanted.allOf()) {
      if (!says(each)) {
        missing.add("\"" + each + "\" does not stand on its first two pages");
      }
    }
    if (!wanted.anyOf().isEmpty() && wanted.anyOf().stream().noneMatch(this::says)) {
      missing.add("none of " + quoted(wanted.anyOf()) + " stands on its first two pages");
    }
    if (!together(wanted.columns(), rows)) {
      missing.add("no table has the headings " + quoted(wanted.columns()));
    }
    if (!together(wanted.rows(), columns)) {
      missing.add("no table has the rows " + quoted(wanted.rows()));
    }
    return missing;
  }

  /** What a fitting rule is recognised by, in words. */
  String reason(LayoutRule.Recognise wanted) {
    List<String> texts = new ArrayList<>(wanted.allOf());
    wanted.anyOf().stream().filter(this::says).findFirst().ifPresent(texts::add);
    List<String> reasons = new ArrayList<>();
    if (!texts.isEmpty()) {
      reasons.add("its first pages say " + quoted(texts));
    }
    if (!wanted.columns().isEmpty()) {
      reasons.add("a table has the headings " + quoted(wanted.columns()));
    }
    if (!wanted.rows().isEmpty()) {
      reasons.add("a table has the rows " + quoted(wanted.rows()));
    }
    return String.join(" and ", reasons);
  }

  private boolean says(String wanted) {
    return text.contains(" " + Tokens.key(wanted) + " ");
  }

  private static boolean together(List<String> labels, List<Set<String>> places) {
    Set<String> wanted = labels.stream().map(Tokens::key).collect(Collectors.toSet());
    return wanted.isEmpty() || places.stream().anyMatch(place -> place.containsAll(wanted));
  }

  private static String quoted(List<String> texts) {
    return texts.stream().map(text -> "\"" + text + "\"").collect(Collectors.joining(", "));
  }
}
