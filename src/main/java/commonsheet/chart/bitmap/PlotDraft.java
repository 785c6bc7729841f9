package commonsheet.chart.bitmap;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.PlotInk;
import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A plot in pixels, before it is placed on the page. */
record PlotDraft(
    Field field,
    Lattice lattice,
    List<Tone> inks,
    List<Curves.Candidate> curves,
    List<Pointers.Line> pointers) {
  /** Least extent of the widest curve, as a share of the plot's width. */
  private static final double WIDEST = 0.25;

  /** Pixels seen of it, against its length: rows of letters joined to a line have fewer. */
  private static final double PLAIN = 0.4;

  /** Extent down the plot, or else the bend, of a curve that is not a rule of a tilted scan. */
  private static final double TILTED = 0.06;

  private static final double BENT = 0.004;

  /** Curves that a plot has at most, and at most where no even grid or ticks tell it is one. */
  private static final int MOST_CURVES = 14;

  private static final int FEW = 6;

  /** Pieces of line of one ink in a legend for each curve; more of them are letters. */
  /** Longest level bar of a letter in heights of its word. */
  private static final double LONGEST_BAR = 1.5;

  private static final int MOST_SAMPLES = 6;

  /**
   * How far the middle of a line may be off, in pixels, and in line widths: renderers set frames on
   * whole pixels and curves between them.
   */
  private static final double PIXELS = 0.5;

  private static final double WIDTHS = 0.08;

  /** Smallest plot in pixels: three inches at 75 dots to the inch are twice that. */
  private static final double NARROWEST = 100;

  private static final double LOWEST = 60;

  /** Largest box laid over a plot, as a share of it, and pixels of its border. */
  private static final double LARGEST_BOX = 0.5;

  private static final int BORDER = 3;

  /** The inks of a plot and all lines in them. */
  record Tracing(
      List<Tone> inks, List<Curves.Candidate> candidates, List<LabelLeaders.Leader> leaders) {}

  /**
   * @param boxes drawn around legends and notes, in pixels of the picture
   * @param words level words in the plot, in pixels of the picture
   */
  static PlotDraft of(Field field, Lattice lattice, List<Area> boxes, List<Area> words) {
    Tracing tracing = trace(field, lattice, boxes, words);
    List<Curves.Candidate> curves = new Curves(lattice.area()).among(tracing.candidates());
    List<Pointers.Line> pointers =
        new ArrayList<>(new Pointers(field, lattice.area(), curves).among(tracing.candidates()));
    for (LabelLeaders.Leader leader : tracing.leaders()) {
      pointers.add(
          new Pointers.Line(
              leader.x0(),
              leader.y0(),
              leader.x1(),
              leader.y1(),
              false,
              field.tone((int) leader.y0() * field.width + (int) leader.x0())));
    }
    return new PlotDraft(field, lattice, tracing.inks(), curves, pointers);
  }

  static Tracing trace(Field field, Lattice lattice, List<Area> boxes, List<Area> words) {
    boolean[] ruled = Ruling.of(field, lattice);
    boolean[] hidden = hide(field, lattice.area(), boxes, ruled);
    List<LabelLeaders.Leader> leaders = List.of();
    if (!words.isEmpty()) {
      LabelLeaders labels = new LabelLeaders(field, ink(field, ruled));
      leaders = labels.of(words.stream().map(word -> inField(word, field)).toList());
      labels.takeOut(leaders, ruled, hidden);
    }
    boolean[] ink = ink(field, ruled);
    List<Tone> inks = Palette.of(field, ink);
    List<Curves.Candidate> candidates = new ArrayList<>();
    for (Layer layer : Layers.of(field, ruled, hidden, inks)) {
      Follower follower = new Follower(field, layer);
      for (Strand strand : follower.strands()) {
        candidates.add(new Curves.Candidate(strand, follower.lineWidth(), layer));
      }
    }
    return new Tracing(inks, candidates, leaders);
  }

  private static boolean[] ink(Field field, boolean[] ruled) {
    boolean[] ink = new boolean[field.size()];
    for (int i = 0; i < ink.length; i++) {
      ink[i] = !ruled[i] && field.strength[i] > Palette.INK;
    }
    return ink;
  }

  private static Area inField(Area area, Field field) {
    return new Area(
        area.left() - field.left,
        area.top() - field.top,
        area.right() - field.left,
        area.bottom() - field.top);
  }

  /** Takes out what lies in boxes laid over the plot: the words and samples of a legend, a note. */
  private static boolean[] hide(Field field, Area plot, List<Area> boxes, boolean[] ruled) {
    boolean[] hidden = new boolean[field.size()];
    for (Area box : boxes) {
      if (box.shareWithin(plot) == 0
          || plot.shareWithin(box) > LARGEST_BOX
          || box.height() > 0.8 * plot.height()) {
        continue;
      }
      int x0 = Math.max(0, (int) box.left() - field.left - BORDER);
      int x1 = Math.min(field.width - 1, (int) box.right() - field.left + BORDER);
      int y0 = Math.max(0, (int) box.top() - field.top - BORDER);
      int y1 = Math.min(field.height - 1, (int) box.bottom() - field.top + BORDER);
      for (int y = y0; y <= y1; y++) {
        for (int x = x0; x <= x1; x++) {
          ruled[y * field.width + x] = true;
          hidden[y * field.width + x] = true;
        }
      }
    }
    return hidden;
  }

  /** Whether there is a curve in it that crosses a good part of it and is no straight rule. */
  boolean isPlot(Raster raster) {
    Area area = lattice.area();
    boolean large = area.width() * area.height() > 0.2 * raster.width * raster.height;
    return area.width() >= NARROWEST
        && area.height() >= LOWEST
        && curves.size() <= MOST_CURVES
        && (lattice.isEven() || isRuled() && curves.size() <= FEW || large && curves.size() <= FEW)
        && curves.stream().anyMatch(this::isPlain);
  }

  /**
   * Whether a curve crosses a good part of the plot, is no rule, and was seen for the most part.
   */
  private boolean isPlain(Curves.Candidate curve) {
    Strand strand = curve.strand();
    Area area = lattice.area();
    Shape shape = new Shape(strand, curve.lineWidth());
    boolean solid = DashPattern.of(strand, curve.layer(), curve.lineWidth()) == InkStyle.Dash.SOLID;
    boolean tilted = strand.spanY() > TILTED * area.height();
    return strand.spanX() > WIDEST * area.width()
        && strand.spanY() > 4
        && strand.length() >= PLAIN * shape.arc()
        && (tilted || solid && shape.straightness() > BENT * shape.arc());
  }

  /** Whether it has grid lines or ticks beside its sides. */
  boolean isRuled() {
    return lattice.levelMarks().size() + lattice.uprightMarks().size() >= 6;
  }

  /** Length of all curves in pixels. */
  double ink() {
    return curves.stream().mapToDouble(c -> c.strand().length()).sum();
  }

  Plot plot(int page, Raster raster, Placing placing, List<Word> words) {
    Area area = lattice.area();
    Point a = placing.onPage(area.left(), area.top());
    Point b = placing.onPage(area.right(), area.bottom());
    Box frame = new Box(a.x(), a.y(), b.x() - a.x(), b.y() - a.y());
    return new Plot(
        page,
        frame,
        PlotInk.PIXELS,
        placing.pixel(),
        lattice.uprightMarks().stream().map(x -> placing.onPage(x, 0).x()).toList(),
        lattice.levelMarks().stream().map(y -> placing.onPage(0, y).y()).toList(),
        curves.stream().map(c -> trace(c, field, placing, doubts(c))).toList(),
        samples(raster, placing, words),
        pointers.stream().map(p -> pointer(p, placing)).toList(),
        Surroundings.words(words, frame));
  }

  /** Short pieces of line of the inks that curves have, but for those that are part of a curve. */
  private List<Sample> samples(Raster raster, Placing placing, List<Word> words) {
    List<Sample> out = new ArrayList<>();
    List<Tone> used =
        inks.stream().filter(ink -> curves.stream().anyMatch(c -> c.ink() == ink)).toList();
    double lineWidth = curves.stream().mapToDouble(Curves.Candidate::lineWidth).max().orElse(1);
    List<Swatches.Swatch> found =
        new Swatches(raster, lattice.area(), field.ground, used).find(lineWidth);
    for (Tone ink : used) {
      List<Sample> own = new ArrayList<>();
      for (Swatches.Swatch swatch : found) {
        if (swatch.ink() == ink
            && curves.stream().noneMatch(c -> isPart(swatch.area(), c.strand()))) {
          Sample sample = sample(swatch, placing, lineWidth);
          if (words.stream().noneMatch(w -> isLetter(sample, w))) {
            own.add(sample);
          }
        }
      }
      long alike = curves.stream().filter(c -> c.ink() == ink).count();
      if (own.size() <= MOST_SAMPLES * Math.max(1, alike)) {
        out.addAll(own);
      }
    }
    return out;
  }

  /** The bars of letters are short; a recognised word's box can reach over its sample. */
  private static boolean isLetter(Sample sample, Word word) {
    Box box = sample.box();
    boolean bars =
        sample.style().dash() != InkStyle.Dash.SOLID
            || box.width() < LONGEST_BAR * word.box().height();
    return bars
        && word.box().contains(box.centreX(), box.centreY())
        && word.text().codePoints().anyMatch(Character::isLetterOrDigit);
  }

  private Sample sample(Swatches.Swatch swatch, Placing placing, double lineWidth) {
    Area area = swatch.area();
    Point a = placing.onPage(area.left() - 0.5, area.top() - 0.5);
    Point b = placing.onPage(area.right() + 0.5, area.bottom() + 0.5);
    InkStyle style =
        new InkStyle(
            swatch.ink().on(field.ground), swatch.dash(lineWidth), swatch.marker(), b.y() - a.y());
    return new Sample(new Box(a.x(), a.y(), b.x() - a.x(), b.y() - a.y()), style);
  }

  private boolean isPart(Area piece, Strand strand) {
    Area near = piece.grown(2);
    for (int i = 0; i < strand.length(); i++) {
      if (near.contains(strand.x()[i] + field.left, strand.y()[i] + field.top)) {
        return true;
      }
    }
    return false;
  }

  private Pointer pointer(Pointers.Line line, Placing placing) {
    return new Pointer(
        placing.onPage(line.x0() + field.left, line.y0() + field.top),
        placing.onPage(line.x1() + field.left, line.y1() + field.top),
        line.arrow(),
        line.ink().on(field.ground));
  }

  private List<String> doubts(Curves.Candidate curve) {
    return Doubts.of(curve, curves, lattice.area());
  }

  /** A line of the field at its places on the page, from left to right. */
  static Trace trace(Curves.Candidate curve, Field field, Placing placing, List<String> doubts) {
    Strand strand = curve.strand();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < strand.length(); i++) {
      points.add(placing.onPage(strand.x()[i] + field.left, strand.y()[i] + field.top));
    }
    if (points.get(0).x() > points.get(points.size() - 1).x()) {
      Collections.reverse(points);
    }
    double pixel = placing.pixel();
    InkStyle style =
        new InkStyle(
            strand.tone().on(field.ground),
            DashPattern.of(strand, curve.layer(), curve.lineWidth()),
            Markers.along(strand, curve.layer(), curve.lineWidth()),
            curve.lineWidth() * pixel);
    double error = pixel * (PIXELS + WIDTHS * curve.lineWidth());
    return new Trace(points, style, error, error, doubts);
  }
}
