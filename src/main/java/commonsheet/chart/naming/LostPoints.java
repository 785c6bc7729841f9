package commonsheet.chart.naming;

import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts back decimal points that a recogniser lost. Nobody prints "05C"; and where all other labels
 * of a family have as many decimals, "456A" among "1.14A" and "2.28A" is 4.56 A. What was mended is
 * never plain, so that its curve stands unsure.
 */
final class LostPoints {
  private static final Pattern LEADING_NOUGHT =
      Pattern.compile("(?<![\\d.,])0(?=[0-9]+\\s?(?:C|It|m?A)(?![A-Za-z]))");

  /** The first number of a label with the unit of a load. */
  private static final Pattern LOAD =
      Pattern.compile("(?<![\\d.])([0-9]+)(\\.[0-9]+)?(?=\\s?(?:C|It|m?A)(?![A-Za-z]))");

  /** Times the largest other load from which a number without a point is not believed. */
  private static final double FAR = 8;

  /** Labels that a family must have besides the one that is mended. */
  private static final int FEWEST_OTHERS = 2;

  private LostPoints() {}

  /** A label's text with the point behind a leading nought. */
  static String behindNought(String text) {
    return LEADING_NOUGHT.matcher(text).replaceAll("0.");
  }

  /** The labels of a family; the one whose number is far beyond all others is mended or doubted. */
  static List<CurveLabel> ofFamily(List<CurveLabel> labels, LabelReader reader) {
    List<CurveLabel> loads = new ArrayList<>();
    for (CurveLabel label : labels) {
      if (LOAD.matcher(label.text()).find() && load(label.meaning()) != null) {
        loads.add(label);
      }
    }
    List<CurveLabel> mended = new ArrayList<>(labels);
    for (CurveLabel label : loads) {
      boolean pointless = decimals(label) == 0 && label.phrase().recognised();
      List<CurveLabel> others = loads.stream().filter(l -> l != label).toList();
      if (pointless && others.size() >= FEWEST_OTHERS && isFar(label, others)) {
        mended.set(labels.indexOf(label), label.meaning(mended(label, others, reader)));
      }
    }
    return mended;
  }

  private static LabelMeaning mended(
      CurveLabel label, List<CurveLabel> others, LabelReader reader) {
    int decimals = decimals(others.get(0));
    Matcher number = LOAD.matcher(label.text());
    boolean alike = others.stream().allMatch(other -> decimals(other) == decimals);
    if (number.find() && alike && decimals > 0 && number.group(1).length() > decimals) {
      int at = number.end(1) - decimals;
      String text = label.text().substring(0, at) + "." + label.text().substring(at);
      LabelMeaning meaning = reader.read(text);
      if (load(meaning) != null) {
        return meaning.unclear();
      }
    }
    return label.meaning().unclear();
  }

  private static boolean isFar(CurveLabel label, List<CurveLabel> others) {
    double largest = others.stream().mapToDouble(other -> load(other.meaning())).max().orElse(0);
    return load(label.meaning()) > FAR * largest;
  }

  private static int decimals(CurveLabel label) {
    Matcher number = LOAD.matcher(label.text());
    boolean some = number.find() && number.group(2) != null;
    return some ? number.group(2).length() - 1 : 0;
  }

  private static Double load(LabelMeaning meaning) {
    Conditions said = meaning.conditions();
    for (String name :
        List.of(
            Conditions.DISCHARGE_CURRENT,
            Conditions.CHARGE_CURRENT,
            Conditions.DISCHARGE_RATE,
            Conditions.CHARGE_RATE)) {
      if (said.get(name) != null) {
        return said.get(name);
      }
    }
    return null;
  }
}
