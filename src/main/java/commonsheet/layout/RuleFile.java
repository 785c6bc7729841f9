package commonsheet.layout;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A rule file as read.
 *
 * @param name as messages call it
 * @param rule empty where there are problems
 * @param problems what is wrong with it, by line
 */
record RuleFile(String name, Optional<LayoutRule> rule, List<RuleProblem> problems) {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

  RuleFile {
    problems = problems.stream().sorted(Comparator.comparingInt(RuleProblem::line)).toList();
  }

  /** Reads a file that someone wrote, and checks all of it. */
  static RuleFile checked(String name, String text, RuleSchema schema, RuleMeaning meaning) {
    RuleLines lines = RuleLines.of(text);
    if (!lines.problems().isEmpty()) {
      return new RuleFile(name, Optional.empty(), lines.problems());
    }
    List<RuleProblem> problems = schema.problems(lines);
    if (!problems.isEmpty()) {
      return new RuleFile(name, Optional.empty(), problems);
    }
    LayoutRule rule = rule(lines.content());
    problems = meaning.problems(rule, lines);
    return new RuleFile(
        name, problems.isEmpty() ? Optional.of(rule) : Optional.empty(), problems);
  }

  /** Reads a file of the program itself, which the tests have checked. */
  static RuleFile trusted(String name, String text) {
    RuleLines lines = RuleLines.of(text);
    return new RuleFile(name, Optional.of(rule(lines.content())), List.of());
  }

  private static LayoutRule rule(JsonNode content) {
    try {
      return JSON.treeToValue(content, LayoutRule.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the schema lets through what is no layout rule", e);
    }
  }
}
