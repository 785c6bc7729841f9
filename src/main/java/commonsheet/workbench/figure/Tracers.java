package commonsheet.workbench.figure;

import commonsheet.chart.InkTracer;
import commonsheet.sheet.Box;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.Point;
import commonsheet.sheet.SheetException;
import commonsheet.workbench.http.Refusal;
import commonsheet.workbench.place.PageWords;
import commonsheet.workbench.place.Places;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/** Finds the line of a plot that a person points at; plots that were looked at lately are kept. */
public final class Tracers {
  /** Plots that are kept; one takes some hundred kilobytes. */
  private static final int MOST = 12;

  private final Places places;
  private final Deque<Looked> lately = new ArrayDeque<>();

  private record Looked(Path sheet, int page, Box box, InkTracer tracer) {
    boolean isOf(Path otherSheet, int otherPage, Box otherBox) {
      return sheet.equals(otherSheet) && page == otherPage && box.equals(otherBox);
    }
  }

  /** Tracers of sheets whose words and sizes are known there. */
  public Tracers(Places places) {
    this.places = places;
  }

  /**
   * The line at a place.
   *
   * @param page from 1
   * @param box the plot area in points
   * @throws Refusal where there is none, no such page, or the sheet cannot be read
   */
  Proposal at(Path sheet, int page, Box box, Point place) {
    try {
      int pages = places.pictures().sizes(sheet).size();
      if (page < 1 || page > pages) {
        throw new Refusal(
            Refusal.Kind.MISSING, "The sheet has no page " + page + "; it has " + pages + ".");
      }
      return tracer(sheet, page, box)
          .at(place)
          .map(Proposal::of)
          .orElseThrow(
              () ->
                  new Refusal(
                      Refusal.Kind.UNUSABLE,
                      "There is no line at this place; point at the middle of its ink, or place"
                          + " points by hand."));
    } catch (SheetException unreadable) {
      throw new Refusal(Refusal.Kind.UNUSABLE, unreadable.getMessage());
    }
  }

  /** One at a time: looking at a plot takes a second and much memory. */
  private synchronized InkTracer tracer(Path sheet, int page, Box box) throws SheetException {
    for (Looked each : lately) {
      if (each.isOf(sheet, page, box)) {
        lately.remove(each);
        lately.addFirst(each);
        return each.tracer();
      }
    }
    PageWords words = places.words();
    try (OpenSheet open = OpenSheet.open(sheet)) {
      InkTracer tracer = InkTracer.of(open, page, words.known(sheet).get(page - 1).words(), box);
      lately.addFirst(new Looked(sheet, page, box, tracer));
      if (lately.size() > MOST) {
        lately.removeLast();
      }
      return tracer;
    }
  }
}
