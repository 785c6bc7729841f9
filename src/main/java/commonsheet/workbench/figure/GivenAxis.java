package commonsheet.workbench.figure;

import commonsheet.chart.reference.Direction;
import commonsheet.record.Curve;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * An axis as a page gives it.
 *
 * @param key by which curves name it
 */
record GivenAxis(String key, Direction direction, Curve.Axis axis) {
  /** More marks than any axis has. */
  private static final int MOST_TICKS = 200;

  static GivenAxis of(Given given) {
    String along = given.required("along");
    Direction direction =
        switch (along) {
          case "x" -> Direction.ACROSS;
          case "y" -> Direction.DOWN;
          default -> throw unusable("An axis runs along x or y, not along \"" + along + "\".");
        };
    List<Curve.Tick> ticks = new ArrayList<>();
    for (Given tick : given.objects("ticks")) {
      ticks.add(tick(tick));
    }
    if (ticks.size() > MOST_TICKS) {
      throw unusable("An axis takes at most " + MOST_TICKS + " reference marks.");
    }
    String scale = given.text("scale");
    if (scale != null
        && !scale.equals(Curve.Axis.STRAIGHT)
        && !scale.equals(Curve.Axis.LOGARITHMIC)) {
      throw unusable("A scale is straight or logarithmic, not \"" + scale + "\".");
    }
    return new GivenAxis(
        given.required("key"),
        direction,
        new Curve.Axis(given.required("quantity"), given.required("unit"), ticks, scale));
  }

  private static Curve.Tick tick(Given tick) {
    Double at = tick.number("at");
    Double value = tick.number("value");
    if (at == null || value == null) {
      throw unusable("A reference mark needs its place and its value.");
    }
    return new Curve.Tick(at, value, tick.required("text").strip(), tick.number("across"));
  }

  private static Refusal unusable(String sentence) {
    return new Refusal(Refusal.Kind.UNUSABLE, sentence);
  }
}
