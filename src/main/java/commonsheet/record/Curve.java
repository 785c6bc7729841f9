package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;

/**
 * One member of a family of curves on a chart.
 *
 * @param kind discharge, charge, cycle-life, capacity-over-temperature, …
 * @param points x and y pairs in the units of the axes
 * @param uncertainty half-widths for x and y in the units of the axes
 * @param doubts why the curve is unsure, one sentence each; empty when it stands as read
 * @param original what was read before a person corrected it, or null
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Curve(
    String id,
    String kind,
    String label,
    Conditions conditions,
    Axis x,
    Axis y,
    List<List<Double>> points,
    Uncertainty uncertainty,
    Method method,
    Evidence evidence,
    Standing standing,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> doubts,
    Original original) {
  /**
   * What an axis shows.
   *
   * @param quantity such as {@code capacity}, {@code voltage}, {@code time}
   * @param unit UCUM code of the unit the points are in
   * @param ticks the marks the scale was read from; empty for points that stand on no chart
   * @param scale {@code straight} or {@code logarithmic} where a person said which; null where the
   *     ticks tell it
   */
  public record Axis(
      String quantity,
      String unit,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Tick> ticks,
      @JsonInclude(JsonInclude.Include.NON_NULL) String scale) {
    /** Equal steps add. */
    public static final String STRAIGHT = "straight";

    /** Equal steps multiply. */
    public static final String LOGARITHMIC = "logarithmic";

    public Axis {
      ticks = ticks == null ? List.of() : List.copyOf(ticks);
    }

    /** An axis whose ticks tell whether it is logarithmic. */
    public Axis(String quantity, String unit, List<Tick> ticks) {
      this(quantity, unit, ticks, null);
    }
  }

  /**
   * A mark of a scale.
   *
   * @param at its place along the axis, in points from the left or the top of the page
   * @param value in the unit of the axis
   * @param text as printed, or as a person gave it
   * @param across its place across the axis, in points from the top or the left of the page, where
   *     the chart is turned or skewed; null for one that stands upright
   */
  public record Tick(
      double at,
      double value,
      String text,
      @JsonInclude(JsonInclude.Include.NON_NULL) Double across) {
    /** A mark of a chart that stands upright. */
    public Tick(double at, double value, String text) {
      this(at, value, text, null);
    }
  }

  /** Half-widths in the units of the axes. */
  public record Uncertainty(double x, double y) {}

  /**
   * What was read before a person corrected it.
   *
   * @param label null where there was none
   * @param points null where they are still those that were read
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Original(
      String label,
      @JsonInclude(JsonInclude.Include.ALWAYS) Conditions conditions,
      List<List<Double>> points) {
    public Original {
      conditions = conditions == null ? Conditions.NONE : conditions;
      points = points == null ? null : Points.of(points);
    }
  }

  public Curve {
    conditions = conditions == null ? Conditions.NONE : conditions;
    doubts = doubts == null ? List.of() : List.copyOf(doubts);
    points = points == null ? List.of() : Points.of(points);
  }

  /** A curve that nobody has corrected. */
  public Curve(
      String id,
      String kind,
      String label,
      Conditions conditions,
      Axis x,
      Axis y,
      List<List<Double>> points,
      Uncertainty uncertainty,
      Method method,
      Evidence evidence,
      Standing standing,
      List<String> doubts) {
    this(
        id,
        kind,
        label,
        conditions,
        x,
        y,
        points,
        uncertainty,
        method,
        evidence,
        standing,
        doubts,
        null);
  }

  /** The x of all points, in the unit of that axis. */
  public double[] xValues() {
    return Points.along(points, 0);
  }

  /** The y of all points, in the unit of that axis. */
  public double[] yValues() {
    return Points.along(points, 1);
  }

  /** The same curve under other conditions. */
  public Curve with(Conditions others) {
    return new Curve(
        id,
        kind,
        label,
        others,
        x,
        y,
        points,
        uncertainty,
        method,
        evidence,
        standing,
        doubts,
        original);
  }

  /** The same curve under another id. */
  public Curve named(String other) {
    return new Curve(
        other,
        kind,
        label,
        conditions,
        x,
        y,
        points,
        uncertainty,
        method,
        evidence,
        standing,
        doubts,
        original);
  }

  /** The same curve, unsure for one more reason. */
  public Curve doubted(String doubt) {
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return standing(Standing.UNSURE, more);
  }

  /** The same curve with another standing and other doubts. */
  public Curve standing(Standing other, List<String> reasons) {
    return new Curve(
        id,
        kind,
        label,
        conditions,
        x,
        y,
        points,
        uncertainty,
        method,
        evidence,
        other,
        reasons,
        original);
  }

  /** The same curve as a person corrected it, with what was read before. */
  public Curve corrected(String newLabel, Conditions others) {
    Original before = original == null ? new Original(label, conditions, null) : original;
    return new Curve(
        id,
        kind,
        newLabel,
        others,
        x,
        y,
        points,
        uncertainty,
        method,
        evidence,
        Standing.CORRECTED,
        List.of(),
        before);
  }
}
