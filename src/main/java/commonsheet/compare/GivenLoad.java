package commonsheet.compare;

import commonsheet.quantity.GivenQuantity;
import commonsheet.quantity.PlainNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A load that a person writes as a mix of currents: {@code 13A:90%,30A:10%}. */
public final class GivenLoad {
  /** More than any pack of cells that datasheets are about, in A. */
  public static final double HIGHEST = 100_000;

  private static final double PERCENT = 100;

  /** A total this far from the whole is a rounding of the shares. */
  private static final double ROUNDING = 0.005;

  private GivenLoad() {}

  /**
   * The load.
   *
   * @param text currents with their unit (A where none is given), each with its share of the time
   *     behind a colon, as a percentage or a number up to 1; together they make up the whole
   * @throws IllegalArgumentException where the text is none; the message is a sentence
   */
  public static Load parse(String text) {
    Map<Double, Double> shares = new TreeMap<>();
    for (String part : text.split(",", -1)) {
      int colon = part.lastIndexOf(':');
      if (colon < 0) {
        throw new IllegalArgumentException(
            "\"" + part.strip() + "\" lacks its share of the time; write a mix as 13A:90%,30A:10%");
      }
      double current = current(part.substring(0, colon));
      shares.merge(current, share(part.substring(colon + 1)), Double::sum);
    }
    double whole = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    if (Math.abs(whole - 1) > ROUNDING) {
      throw new IllegalArgumentException(
          "the shares of the time of \""
              + text
              + "\" must add up to 100 %, and give "
              + PlainNumber.of(whole * PERCENT, 4)
              + " %");
    }
    List<Load.Share> all = new ArrayList<>();
    shares.forEach((current, share) -> all.add(new Load.Share(current, share / whole)));
    if (all.get(all.size() - 1).current() == 0) {
      throw new IllegalArgumentException("a load of nothing but 0 A asks nothing of a cell");
    }
    return new Load(all);
  }

  private static double current(String text) {
    double current = GivenQuantity.parse(text, "A");
    if (!(current >= 0 && current <= HIGHEST)) {
      throw new IllegalArgumentException(
          "a load has currents from 0 to 100000 A, not \"" + text.strip() + "\"");
    }
    return current;
  }

  /**
   * A share given as a percentage or as a number up to 1: {@code 90%} or {@code 0.9}.
   *
   * @return 0 to 1
   * @throws IllegalArgumentException where the text is none; the message is a sentence
   */
  public static double share(String text) {
    String plain = text.strip();
    boolean percent = plain.endsWith("%");
    String number = percent ? plain.substring(0, plain.length() - 1).strip() : plain;
    double share = GivenQuantity.parse(number, "1") / (percent ? PERCENT : 1);
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException(
          "\"" + plain + "\" is no share; write one such as 90% or 0.9");
    }
    return share;
  }
}
