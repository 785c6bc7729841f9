package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
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
    Map<Look, List<Stroke>> looks = new LinkedHashMap<>();
    for (Stroke stroke : strokes) {
      if (!stroke.look().isPaper()) {
        looks.computeIfAbsent(stroke.look(), look -> new ArrayList<>()).add(stroke);
      }
    }
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
    List<MarkerSeries> used = new ArrayList<>();
    for (Stroke curve : curves) {
      MarkerSeries on = markersOn(curve, markers, frame);
      if (on != null) {
        used.add(on);
      }
      traces.add(trace(curve, on, names));
    }
    for (MarkerSeries series : markers) {
      if (!used.contains(series) && series.isRow(frame)) {
        traces.addAll(MarkerCurves.of(series, frame, words));
      }
    }
    return new Curves(curves, List.copyOf(traces), loose, names);
  }

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

  /** The markers that sit on a curve, or null. */
  private static MarkerSeries markersOn(Stroke curve, List<MarkerSeries> all, Box frame) {
    MarkerSeries best = null;
    double most = MOST;
    for (MarkerSeries series : all) {
      List<Point> centres = series.centresIn(frame);
      int on = 0;
      for (Point centre : centres) {
        on += Geometry.isOn(centre, curve.points(), ON_CURVE) ? 1 : 0;
      }
      double share = on < 3 ? 0 : (double) on / centres.size();
      if (share > most) {
        most = share;
        best = series;
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
