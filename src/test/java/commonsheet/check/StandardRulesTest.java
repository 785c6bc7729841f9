package commonsheet.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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
}
