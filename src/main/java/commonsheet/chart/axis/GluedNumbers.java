package commonsheet.chart.axis;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes apart numbers of an axis that stand without a gap: "0.00.51.01.5". Only one way of cutting
 * makes equal steps of them.
 */
final class GluedNumbers {
  private static final int LONGEST = 6;

  private GluedNumbers() {}

  /** The numbers in their order; none where the text is no run of three or more equal steps. */
  static List<String> of(String text) {
    if (!text.matches("[0-9.]{4,}")) {
      return List.of();
    }
    for (int first = 1; first <= LONGEST && first < text.length(); first++) {
      for (int second = 1; second <= LONGEST && first + second < text.length(); second++) {
        List<String> steps =
            steps(text, text.substring(0, first), text.substring(first, first + second));
        if (steps.size() > 2) {
          return steps;
        }
      }
    }
    return List.of();
  }

  private static List<String> steps(String text, String first, String second) {
    if (!isNumber(first) || !isNumber(second)) {
      return List.of();
    }
    BigDecimal at = new BigDecimal(second);
    BigDecimal step = at.subtract(new BigDecimal(first));
    if (step.signum() <= 0) {
      return List.of();
    }
    List<String> steps = new ArrayList<>(List.of(first, second));
    int end = first.length() + second.length();
    while (end < text.length()) {
      at = at.add(step);
      String next = at.toPlainString();
      if (!text.startsWith(next, end)) {
        return List.of();
      }
      steps.add(next);
      end += next.length();
    }
    return steps;
  }

  private static boolean isNumber(String text) {
    return text.matches("0|[1-9][0-9]*|(0|[1-9][0-9]*)\\.[0-9]+");
  }
}
