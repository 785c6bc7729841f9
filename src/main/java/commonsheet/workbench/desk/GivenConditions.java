package commonsheet.workbench.desk;

import commonsheet.record.ConditionKind;
import commonsheet.record.Conditions;
import commonsheet.review.ReviewException;
import commonsheet.workbench.http.Given;
import java.util.LinkedHashMap;
import java.util.Map;

/** Conditions as a page gives them: name to what was typed, or null to take one away. */
final class GivenConditions {
  /** UCUM has C-rates as one per hour. */
  private static final String RATE = "h-1";

  private GivenConditions() {}

  /** Name to number in the condition's unit, or to null; empty where none are given. */
  static Map<String, Double> of(Given conditions) throws ReviewException {
    Map<String, Double> numbers = new LinkedHashMap<>();
    if (conditions != null) {
      for (String name : conditions.names()) {
        ConditionKind kind = ConditionKind.of(name);
        String typed = conditions.text(name);
        boolean gone = typed == null || typed.isBlank();
        numbers.put(
            name, gone ? null : TypedAmount.single(typed, kind.isRate() ? RATE : kind.unit()));
      }
    }
    return numbers;
  }

  /** Those that are said, for a value that had none. */
  static Conditions stated(Given conditions) throws ReviewException {
    Conditions stated = Conditions.NONE;
    for (Map.Entry<String, Double> condition : of(conditions).entrySet()) {
      if (condition.getValue() != null) {
        stated = stated.with(condition.getKey(), condition.getValue());
      }
    }
    return stated;
  }
}
