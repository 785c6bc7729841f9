package commonsheet.layout;

import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The layout rules known: those that come with the program and those of a user's folder. */
public final class LayoutLibrary {
  /** So many rules that nearly fit are told of; more would hide the reason itself. */
  private static final int MOST_TOLD = 3;

  private final List<LayoutRule> own;
  private final List<LayoutRule> builtIn;

  /**
   * A library of these rules.
   *
   * @param own come before the others, however much those ask for
   */
  LayoutLibrary(List<LayoutRule> own, List<LayoutRule> builtIn) {
    this.own = sorted(own);
    this.builtIn = sorted(builtIn);
  }

  /**
   * Loads the rule files of a folder besides the program's own.
   *
   * @param folder its files *.yaml and *.yml are read, those of folders in it are not; null for the
   *     program's own rules only
   * @throws LayoutException where the folder cannot be read or a file is no valid rule file; the
   *     message names file and line
   */
  public static LayoutLibrary load(Path folder) throws LayoutException {
    List<LayoutRule> builtIn = RuleFolder.builtIn();
    return new LayoutLibrary(
        folder == null ? List.of() : RuleFolder.read(folder, builtIn), builtIn);
  }

  /** A layout and why it was chosen. */
  record Choice(LayoutRule rule, String why) {}

  /** The rule that fits; of several one of the user's, then the one that asks for most. */
  Choice choose(Sheet sheet) {
    if (own.isEmpty() && builtIn.isEmpty()) {
      return new Choice(LayoutRule.GENERAL, "there are no rule files");
    }
    Recognition seen = new Recognition(sheet);
    List<LayoutRule> fitting = new ArrayList<>();
    for (List<LayoutRule> rules : List.of(own, builtIn)) {
      rules.stream()
          .filter(rule -> seen.missing(rule.recognise()).isEmpty())
          .forEach(fitting::add);
    }
    if (fitting.isEmpty()) {
      String why = "no rule file recognises it; the general vocabulary serves";
      return new Choice(LayoutRule.GENERAL, why + misses(seen));
    }
    LayoutRule chosen = fitting.get(0);
    return new Choice(chosen, seen.reason(chosen.recognise()) + others(fitting));
  }

  private String misses(Recognition seen) {
    StringBuilder told = new StringBuilder();
    own.stream()
        .limit(MOST_TOLD)
        .forEach(
            rule ->
                told.append("; not by ")
                    .append(rule.name())
                    .append(", since ")
                    .append(String.join(" and ", seen.missing(rule.recognise()))));
    return told.toString();
  }

  private static String others(List<LayoutRule> fitting) {
    if (fitting.size() == 1) {
      return "";
    }
    List<String> names = fitting.stream().skip(1).limit(MOST_TOLD).map(LayoutRule::name).toList();
    return "; " + String.join(", ", names) + (names.size() == 1 ? " fits" : " fit") + " too";
  }

  private static List<LayoutRule> sorted(List<LayoutRule> rules) {
    return rules.stream()
        .sorted(
            Comparator.<LayoutRule>comparingInt(rule -> askedFor(rule.recognise()))
                .reversed()
                .thenComparing(LayoutRule::name))
        .toList();
  }

  private static int askedFor(LayoutRule.Recognise recognise) {
    return recognise.allOf().size()
        + recognise.columns().size()
        + recognise.rows().size()
        + (recognise.anyOf().isEmpty() ? 0 : 1);
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
