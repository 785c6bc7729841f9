package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds short pieces of line, and single markers, that stand beside words and look like a curve.
 */
final class LegendSamples {
  /** Lengths in points of the samples of legends. */
  private static final double SHORTEST = 4;

  private static final double LONGEST = 90;

  /** How far in points a word can stand from its sample. */
  private static final double FARTHEST = 30;

  /** How far in points a sample may reach into the box of its word. */
  private static final double OVERLAP = 1.5;

  /** How far two colours may differ, 0 to 1, and be the same ink. */
  private static final double SAME_COLOUR = 0.03;

  private final List<Word> words;
  private final List<Trace> traces;
  private final DashNames names;

  LegendSamples(List<Word> words, List<Trace> traces, DashNames names) {
    this.names = names;
    this.words = words;
    this.traces = traces;
  }

  List<Sample> find(List<Rule> loose, List<Shape> shapes, List<MarkerSeries> markers) {
    List<Sample> samples = new ArrayList<>();
    List<Shape> onLines = new ArrayList<>();
    for (Rule rule : loose) {
      boolean sized = rule.level() && rule.length() >= SHORTEST && rule.length() <= LONGEST;
      if (!sized || !isBesideWord(rule.box(), words) || !looksLikeTrace(rule.look().rgb())) {
        continue;
      }
      Shape on = markerOn(rule, shapes);
      if (on != null) {
        onLines.add(on);
      }
      InkStyle.Marker marker = on == null ? InkStyle.Marker.NONE : Outline.marker(on);
      samples.add(new Sample(rule.box(), names.style(rule.look(), marker)));
    }
    for (MarkerSeries series : markers) {
      for (Shape shape : series.shapes()) {
        if (!onLines.contains(shape) && isMarkerSample(shape, series)) {
          InkStyle style = new InkStyle(series.rgb(), InkStyle.Dash.SOLID, series.marker(), 0);
          samples.add(new Sample(shape.box(), style));
        }
      }
    }
    return samples;
  }

  /** The marker in the middle of a sample, or null. */
  private static Shape markerOn(Rule rule, List<Shape> shapes) {
    for (Shape shape : shapes) {
      if (Math.abs(shape.centre().y() - rule.at()) < ON_LINE
          && shape.centre().x() > rule.from() - ON_LINE
          && shape.centre().x() < rule.to() + ON_LINE
          && Look.difference(shape.rgb(), rule.look().rgb()) <= SAME_COLOUR) {
        return shape;
      }
    }
    return null;
  }

  /** Points by which the middle of a marker may lie off its line. */
  private static final double ON_LINE = 0.8;

  private boolean isMarkerSample(Shape shape, MarkerSeries series) {
    boolean known =
        traces.stream()
            .anyMatch(
                trace ->
                    trace.style().marker() == series.marker()
                        && Look.difference(trace.style().rgb(), series.rgb()) <= SAME_COLOUR);
    return known
        && isBesideWord(shape.box(), words)
        && traces.stream().noneMatch(trace -> Geometry.isOn(shape.centre(), trace.points(), 0.8));
  }

  private boolean looksLikeTrace(int rgb) {
    return traces.stream()
        .anyMatch(trace -> Look.difference(trace.style().rgb(), rgb) <= SAME_COLOUR);
  }

  /** Whether a word stands to the right or left of a box, at its height. */
  static boolean isBesideWord(Box box, List<Word> words) {
    for (Word word : words) {
      double right = word.box().x() - box.right();
      double left = box.x() - word.box().right();
      boolean level =
          box.centreY() >= word.box().y() - 1 && box.centreY() <= word.box().bottom() + 1;
      boolean near =
          (right >= -OVERLAP && right <= FARTHEST) || (left >= -OVERLAP && left <= FARTHEST);
      if (level && near && word.turn() == 0) {
        return true;
      }
    }
    return false;
  }
}
