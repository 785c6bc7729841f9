package commonsheet.layout;

import commonsheet.sheet.Cell;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What of a sheet layouts are recognised by: the words of its first pages and its tables' rows. */
final class Recognition {
  /** A maker's name and the kind of document stand on the title page or the one after it. */
  private static final int FIRST_PAGES = 2;

  private final String text;
  private final List<Set<String>> rows = new ArrayList<>();

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
        addRows(table);
      }
    }
  }

  private void addRows(Table table) {
    for (int row = 0; row < table.rows(); row++) {
      Set<String> texts = new HashSet<>();
      for (Cell cell : table.cells()) {
        if (cell.row() == row) {
          texts.add(Tokens.key(cell.text()));
        }
      }
      rows.add(texts);
    }
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
    if (!wanted.columns().isEmpty() && !heads(wanted.columns())) {
      missing.add("no table has the headings " + quoted(wanted.columns()));
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
    return String.join(" and ", reasons);
  }

  private boolean says(String wanted) {
    return text.contains(" " + Tokens.key(wanted) + " ");
  }

  private boolean heads(List<String> headings) {
    Set<String> wanted = headings.stream().map(Tokens::key).collect(Collectors.toSet());
    return rows.stream().anyMatch(row -> row.containsAll(wanted));
  }

  private static String quoted(List<String> texts) {
    return texts.stream().map(text -> "\"" + text + "\"").collect(Collectors.joining(", "));
  }
}
