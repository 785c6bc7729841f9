package commonsheet.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class StandardRulesTest {
  @Test
  void namesEveryRuleOnceWithItsSource() {
    List<CheckRule> rules = Checks.standard().rules();
    assertEquals(rules.size(), rules.stream().map(CheckRule::id).distinct().count());
    for (CheckRule rule : rules) {
      assertTrue(rule.id().matches("[a-z]+(-[a-z]+)*/[a-z]+(-[a-z]+)*"), rule.id());
      assertFalse(rule.source().isBlank(), rule.id());
    }
  }

  /** docs/check.md tells every rule with its severity and its source, and none that is not. */
  @Test
  void isToldInTheDocs() throws IOException {
    Map<String, String> told = new TreeMap<>();
    Pattern row =
        Pattern.compile("\\| `([^`]+/[^`]+)` \\| (error|warning|note) \\| .+ \\| (.+) \\|");
    Files.readString(Path.of("docs", "check.md"))
        .lines()
        .map(row::matcher)
        .filter(Matcher::matches)
        .forEach(r -> told.put(r.group(1), r.group(2) + ", " + r.group(3)));
    Map<String, String> rules = new TreeMap<>();
    for (CheckRule rule : Checks.standard().rules()) {
      rules.put(rule.id(), severity(rule.severity()) + ", " + rule.source());
    }
    for (RecordsRule rule : Checks.between()) {
      rules.put(rule.id(), severity(rule.severity()) + ", " + rule.source());
    }
    assertEquals(rules, told);
  }

  private static String severity(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }
}
