package commonsheet.layout;

import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Word;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The layout rules known: those that come with the program and those of a user's folder. */
public final class LayoutLibrary {
  private final List<LayoutRule> rules;

  LayoutLibrary(List<LayoutRule> rules) {
    this.rules = List.copyOf(rules);
  }

  /**
   * Loads the rule files of a folder besides the program's own.
   *
   * @param folder may be null
   * @throws LayoutException where a file is no valid rule file; the message names file and line
   */
  public static LayoutLibrary load(Path folder) throws LayoutException {
    return new LayoutLibrary(List.of());
  }

  /** A layout and why it was chosen. */
  record Choice(LayoutRule rule, String why) {}

  Choice choose(Sheet sheet) {
    String text = firstPages(sheet);
    for (LayoutRule rule : rules) {
      List<String> all = rule.recognise().allOf();
      List<String> any = rule.recognise().anyOf();
      boolean every = all.stream().allMatch(t -> text.contains(t.toLowerCase(Locale.ROOT)));
      boolean one = any.isEmpty() || any.stream().anyMatch(t -> text.contains(t.toLowerCase(Locale.ROOT)));
      if (every && one && !(all.isEmpty() && any.isEmpty())) {
        return new Choice(rule, "its first pages say " + String.join(", ", all.isEmpty() ? any : all));
      }
    }
    return new Choice(LayoutRule.GENERAL, "no rule file recognises it; the general vocabulary serves");
  }

  private static String firstPages(Sheet sheet) {
    return sheet.pages().stream()
        .limit(2)
        .flatMap(p -> p.words().stream())
        .map(Word::text)
        .collect(Collectors.joining(" "))
        .toLowerCase(Locale.ROOT);
  }

  static String textOf(Sheet sheet) {
    StringBuilder text = new StringBuilder();
    for (Page page : sheet.pages()) {
      for (Line line : page.lines()) {
        text.append(line.text()).append('\n');
      }
      page.tables().forEach(t -> t.cells().forEach(c -> text.append(c.text()).append('\n')));
    }
    return text.toString();
  }
}
