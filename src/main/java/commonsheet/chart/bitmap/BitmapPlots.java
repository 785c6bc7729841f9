package commonsheet.chart.bitmap;

import commonsheet.chart.plot.Plot;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the plots in a picture and follows their curves. */
public final class BitmapPlots {
  /** Share of a plot that must be ground: more ink than that is a photograph or a drawing. */
  private static final double LEAST_GROUND = 0.45;

  /** Share of an area that a plot inside may take for the area to be looked at as well. */
  private static final double MOST_INSIDE = 0.3;

  private BitmapPlots() {}

  /**
   * The plots of a picture, from the top down.
   *
   * @param picture a page or a part of one
   * @param words the words of that page, written or recognised; may be empty
   */
  public static List<Plot> find(PagePixels picture, List<Word> words) {
    Raster raster = Raster.of(picture.image());
    View view = View.of(raster);
    View transposed = view.transposed();
    List<PlotDraft> drafts = new ArrayList<>();
    Lines lines = Lines.of(view, transposed);
    List<Area> boxes = lines.boxes();
    Placing placing = new Placing(picture, raster);
    List<Area> level = words.stream().filter(w -> w.turn() == 0).map(placing::area).toList();
    for (Area rough : Frames.find(lines)) {
      if (isAroundPlots(rough, drafts)) {
        continue;
      }
      Lattice lattice = Lattice.of(view, transposed, rough);
      Field field = new Field(raster, lattice.area());
      if (field.groundShare >= LEAST_GROUND) {
        List<Area> inside =
            level.stream().filter(word -> word.shareWithin(lattice.area()) > 0.5).toList();
        PlotDraft draft = PlotDraft.of(field, lattice, boxes, inside);
        if (draft.isPlot(raster)) {
          drafts.add(draft);
        }
      }
    }
    return distinct(drafts).stream()
        .sorted(Comparator.comparingDouble(d -> d.lattice().area().top()))
        .map(d -> d.plot(picture.page(), raster, placing, words))
        .toList();
  }

  /** Whether an area goes around plots that were found already: a page or a box of figures. */
  private static boolean isAroundPlots(Area area, List<PlotDraft> drafts) {
    List<Area> inside =
        drafts.stream()
            .filter(PlotDraft::isRuled)
            .map(d -> d.lattice().area())
            .filter(a -> a.shareWithin(area) > 0.95 && a.width() * a.height() > 0)
            .toList();
    double covered = inside.stream().mapToDouble(a -> a.width() * a.height()).sum();
    return inside.size() > 1 || covered > MOST_INSIDE * area.width() * area.height();
  }

  /** Of plots that lie in each other, the one that holds the curves most closely. */
  private static List<PlotDraft> distinct(List<PlotDraft> drafts) {
    List<PlotDraft> out = new ArrayList<>();
    for (PlotDraft draft : drafts) {
      if (drafts.stream().noneMatch(o -> o != draft && isBetter(o, draft))) {
        out.add(draft);
      }
    }
    return out;
  }

  /** Whether another plot shows what this one is about, without what is around it. */
  private static boolean isBetter(PlotDraft other, PlotDraft draft) {
    Area own = draft.lattice().area();
    Area area = other.lattice().area();
    double ownInk = draft.ink();
    double ink = other.ink();
    boolean inside = area.shareWithin(own) > 0.9;
    boolean around = own.shareWithin(area) > 0.6;
    return inside && ink >= 0.6 * ownInk || around && !inside && ink > ownInk / 0.6;
  }
}
