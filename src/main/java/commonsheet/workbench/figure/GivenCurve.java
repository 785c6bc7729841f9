package commonsheet.workbench.figure;

import commonsheet.quantity.GivenQuantity;
import commonsheet.record.ConditionKind;
import commonsheet.record.Conditions;
import commonsheet.record.Method;
import commonsheet.sheet.Point;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A curve as a page gives it.
 *
 * @param id null for a new one
 * @param kind what it shows
 * @param label null for none
 * @param conditions those to change: name to number in the condition's unit, or null to take it
 *     away
 * @param x key of its x axis
 * @param y key of its y axis
 * @param places in points of the page; null where they are as the record has them
 * @param placed how many of them a person placed
 * @param removed how many points a person took out
 * @param traced how the others were followed; null where they were not followed anew
 */
record GivenCurve(
    String id,
    String kind,
    String label,
    Map<String, Double> conditions,
    String x,
    String y,
    List<Point> places,
    int placed,
    int removed,
    Followed traced) {
  private static final int MOST_POINTS = 5_000;

  /** UCUM has C-rates as one per hour. */
  private static final String RATE = "h-1";

  /** Farther off than this, in points, no line is followed. */
  private static final double WORST = 20;

  /**
   * How a line was followed from a click.
   *
   * @param errorX in points of the page
   * @param errorY in points of the page
   */
  record Followed(Method method, double errorX, double errorY) {}

  static GivenCurve of(Given given) {
    String label = given.text("label");
    return new GivenCurve(
        given.text("id"),
        given.required("kind"),
        label == null || label.isBlank() ? null : label.strip(),
        conditions(given.object("conditions")),
        given.required("x"),
        given.required("y"),
        given.has("places") ? places(given.numbers("places")) : null,
        given.has("placed") ? given.whole("placed") : 0,
        given.has("removed") ? given.whole("removed") : 0,
        followed(given.object("traced")));
  }

  /** What to call it where something is wrong with it. */
  String name() {
    return id != null
        ? "curve " + id
        : label != null ? "the new curve \"" + label + "\"" : "the new curve";
  }

  private static List<Point> places(List<Double> numbers) {
    if (numbers.size() % 2 != 0 || numbers.size() > 2 * MOST_POINTS) {
      throw unusable("A curve has pairs of numbers as its places, at most " + MOST_POINTS + ".");
    }
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i += 2) {
      places.add(new Point(numbers.get(i), numbers.get(i + 1)));
    }
    return places;
  }

  private static Followed followed(Given given) {
    if (given == null) {
      return null;
    }
    Double x = given.number("errorX");
    Double y = given.number("errorY");
    if (x == null || y == null || x <= 0 || y <= 0 || x > WORST || y > WORST) {
      throw unusable("A traced line tells how far it may be off, in points above 0.");
    }
    boolean paths = given.required("ink").equals("paths");
    return new Followed(paths ? Method.VECTOR_CURVE : Method.COLOUR_TRACE, x, y);
  }

  private static Map<String, Double> conditions(Given given) {
    Map<String, Double> conditions = new LinkedHashMap<>();
    if (given == null) {
      return conditions;
    }
    for (String name : given.names()) {
      String typed = given.text(name);
      conditions.put(name, typed == null || typed.isBlank() ? null : number(name, typed));
    }
    return conditions;
  }

  private static double number(String name, String typed) {
    try {
      ConditionKind kind = ConditionKind.of(name);
      return GivenQuantity.parse(typed, kind.isRate() ? RATE : kind.unit());
    } catch (IllegalArgumentException wrong) {
      throw unusable(wrong.getMessage() + "; mend the conditions of the curve.");
    }
  }

  /** These conditions over others. */
  Conditions over(Conditions before) {
    Conditions after = before;
    for (Map.Entry<String, Double> each : conditions.entrySet()) {
      after =
          each.getValue() == null
              ? after.without(each.getKey())
              : after.with(each.getKey(), each.getValue());
    }
    return after;
  }

  private static Refusal unusable(String sentence) {
    return new Refusal(Refusal.Kind.UNUSABLE, sentence);
  }
}
