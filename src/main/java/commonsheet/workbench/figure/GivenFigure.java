package commonsheet.workbench.figure;

import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.review.ReviewException;
import commonsheet.review.Settling;
import commonsheet.sheet.Box;
import commonsheet.workbench.desk.Deed;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a person did at a chart, as one deed: its axes as they are now and its curves.
 *
 * @param page from 1
 * @param box the plot area
 * @param axes by their keys
 * @param curves those that are there, changed or not, and new ones; curves of the record that are
 *     not among them stay as they are
 */
record GivenFigure(
    int page, Box box, Map<String, GivenAxis> axes, List<GivenCurve> curves, String remark)
    implements Deed {
  private static final int MOST_CURVES = 200;

  static GivenFigure of(Given given) {
    Map<String, GivenAxis> axes = new LinkedHashMap<>();
    for (Given each : given.objects("axes")) {
      GivenAxis axis = GivenAxis.of(each);
      axes.put(axis.key(), axis);
    }
    List<GivenCurve> curves = given.objects("curves").stream().map(GivenCurve::of).toList();
    if (curves.isEmpty() || curves.size() > MOST_CURVES) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE,
          curves.isEmpty()
              ? "The chart has no curve yet; trace one by a click on its ink, or place its points."
              : "A chart has at most " + MOST_CURVES + " curves.");
    }
    return new GivenFigure(
        given.whole("page"),
        FigureRoutes.box(given.numbers("box")),
        axes,
        curves,
        given.text("remark"));
  }

  /** The deed in few words, for undoing it. */
  String what() {
    return "the work at the chart on page " + page;
  }

  @Override
  public CellRecord of(Settling settling, CellRecord record) throws ReviewException {
    Integer pages = record.source().pages();
    if (page < 1 || pages == null || page > pages) {
      throw new ReviewException("the sheet has no page " + page);
    }
    List<Curve> changed = new ArrayList<>();
    List<Curve> added = new ArrayList<>();
    for (GivenCurve given : curves) {
      CurveWork work = new CurveWork(given, this, record);
      if (given.id() == null) {
        added.add(work.added());
      } else {
        Curve before = record.curve(given.id());
        if (before == null) {
          throw new ReviewException("the record has no " + given.id() + "; load the page anew");
        }
        Curve after = work.changed(before);
        if (!after.equals(before)) {
          changed.add(after);
        }
      }
    }
    return changed.isEmpty() && added.isEmpty()
        ? record
        : settling.drawn(record, changed, added, remark);
  }

  /** The axis that a curve names. */
  GivenAxis axis(String key, String curve) throws ReviewException {
    GivenAxis axis = axes.get(key);
    if (axis == null) {
      throw new ReviewException(curve + " names an axis " + key + " that the chart does not have");
    }
    return axis;
  }
}
