package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The curves of a plot, from its strokes and markers.
 *
 * @param strokes the curves that are drawn as lines, in the order of painting
 * @param traces the same, and those drawn by markers alone
 * @param names what its broken lines are called
 * @param loose strokes too small or too straight to be a curve
 */
record Curves(List<Stroke> strokes, List<Trace> traces, List<Stroke> loose, DashNames names) {
  /** How far in points around a word its white ground can hide a curve. */
  private static final double GROUND = 4;

  /** Points within which a marker sits on a curve. */
  private static final double ON_CURVE = 0.8;

  /** Share of a series of markers that must sit on a curve to belong to it. */
  private static final double MOST = 0.5;

  /** Points within which two curves of one colour are the same one drawn twice. */
  private static final double TWICE = 0.15;

  static Curves of(
      List<Stroke> strokes,
      List<MarkerSeries> markers,
      Box frame,
      List<Patch> patches,
      List<Word> words) {
    List<Box> covers = covers(frame, patches, words);
    Map<Look, List<Stroke>> looks = byLook(strokes);
    CurveSize size = new CurveSize(frame);
    List<Stroke> curves = new ArrayList<>();
    List<Stroke> loose = new ArrayList<>();
    for (Map.Entry<Look, List<Stroke>> same : looks.entrySet()) {
      List<MarkerSeries> own =
          markers.stream().filter(series -> series.rgb() == same.getKey().rgb()).toList();
      for (Stroke joined : CurveJoiner.join(same.getValue(), frame.width(), covers, own)) {
        (size.isCurve(joined) ? curves : loose).add(joined);
      }
    }
    curves = withoutRepeats(curves);
    List<Stroke> leaders = leaders(curves, words, frame);
    curves.removeAll(leaders);
    loose.addAll(leaders);
    curves.sort(Comparator.comparingInt(Stroke::order));
    DashNames names = DashNames.of(curves.stream().map(Stroke::look).toList());
    List<Trace> traces = new ArrayList<>();
    Map<Stroke, MarkerSeries> marked = new IdentityHashMap<>();
    List<Trace> rows = new ArrayList<>();
    for (MarkerSeries series : markers) {
      Stroke curve = curveOf(series, curves, frame);
      if (curve != null) {
        marked.merge(curve, series, MarkerSeries::larger);
      } else if (series.isRow(frame)) {
        rows.addAll(MarkerCurves.of(series, frame, words));
      }
    }
    for (Stroke curve : curves) {
      traces.add(trace(curve, marked.get(curve), names));
    }
    traces.addAll(rows);
    return new Curves(curves, List.copyOf(traces), loose, names);
  }

  /** A stroke as a line by itself. */
  Trace trace(Stroke stroke) {
    return trace(stroke, null, names);
  }

  /** Strokes that look the same, taking into account that drawn dashes are measured. */
  private static Map<Look, List<Stroke>> byLook(List<Stroke> strokes) {
    Map<Look, List<Stroke>> looks = new LinkedHashMap<>();
    for (Stroke stroke : strokes) {
      Look look = stroke.look();
      if (look.isPaper()) {
        continue;
      }
      Look known =
          looks.containsKey(look)
              ? look
              : looks.keySet().stream()
                  .filter(
                      other ->
                          other.rgb() == look.rgb()
                              && Math.abs(other.width() - look.width()) <= SAME_WIDTH
                              && !look.dash().isEmpty()
                              && DashNames.isAlike(other.dash(), look.dash()))
                  .findFirst()
                  .orElse(look);
      looks.computeIfAbsent(known, key -> new ArrayList<>()).add(stroke);
    }
    return looks;
  }

  /** Points by which the widths of the dashes of one line may differ. */
  private static final double SAME_WIDTH = 0.25;

  private static List<Stroke> leaders(List<Stroke> curves, List<Word> words, Box frame) {
    List<Stroke> leaders = new ArrayList<>();
    for (Stroke curve : curves) {
      List<Stroke> others = curves.stream().filter(other -> other != curve).toList();
      if (Leaders.isLeader(curve, others, words, frame)) {
        leaders.add(curve);
      }
    }
    return leaders;
  }

  private static List<Box> covers(Box frame, List<Patch> patches, List<Word> words) {
    List<Box> covers = new ArrayList<>();
    for (Patch patch : patches) {
      boolean small = patch.box().width() < 0.8 * frame.width();
      if (small && Geometry.touch(patch.box(), frame)) {
        covers.add(patch.box());
      }
    }
    for (Word word : words) {
      if (Geometry.touch(word.box(), frame)) {
        covers.add(Geometry.grown(word.box(), GROUND));
      }
    }
    return covers;
  }

  private static List<Stroke> withoutRepeats(List<Stroke> curves) {
    List<Stroke> kept = new ArrayList<>();
    for (Stroke curve : curves) {
      if (kept.stream().noneMatch(other -> isSame(curve, other))) {
        kept.add(curve);
      }
    }
    return kept;
  }

  private static boolean isSame(Stroke a, Stroke b) {
    if (a.look().rgb() != b.look().rgb()
        || Math.abs(a.box().x() - b.box().x()) > TWICE
        || Math.abs(a.box().right() - b.box().right()) > TWICE
        || Math.abs(a.box().y() - b.box().y()) > TWICE
        || Math.abs(a.box().bottom() - b.box().bottom()) > TWICE) {
      return false;
    }
    int step = Math.max(1, a.points().size() / 12);
    for (int i = 0; i < a.points().size(); i += step) {
      if (!Geometry.isOn(a.points().get(i), b.points(), TWICE)) {
        return false;
      }
    }
    return true;
  }

  /** Which curve a series of markers sits on, or null. */
  private static Stroke curveOf(MarkerSeries series, List<Stroke> curves, Box frame) {
    List<Point> centres = series.centresIn(frame);
    Stroke best = null;
    int most = (int) (MOST * centres.size());
    for (Stroke curve : curves) {
      int on = 0;
      for (Point centre : centres) {
        on += Geometry.isOn(centre, curve.points(), ON_CURVE) ? 1 : 0;
      }
      if (on > most) {
        most = on;
        best = curve;
      }
    }
    return best;
  }

  private static Trace trace(Stroke curve, MarkerSeries markers, DashNames names) {
    Stroke onward = curve.first().x() <= curve.last().x() ? curve : curve.reversed();
    InkStyle.Marker marker = markers == null ? InkStyle.Marker.NONE : markers.marker();
    double error = Precision.of(onward);
    return new Trace(onward.points(), names.style(curve.look(), marker), error, error, List.of());
  }
}
