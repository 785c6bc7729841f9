package commonsheet.chart.axis;

import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.PlotInk;
import commonsheet.quantity.Dimension;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the axes of a plot: numbers in a row or a column outside its frame, tied to the tick marks
 * and grid lines where there are any, with a scale through them.
 */
final class AxisScales {
  /** Numbers of an axis stand no farther from the frame than this, in heights of a number. */
  private static final double FARTHEST = 12;

  /** A number may lie this far from its tick, as a share of the distance of two numbers. */
  private static final double HAND_SET = 0.15;

  private static final double LEAST_TOLERANCE = 1.0;
  private static final double GREATEST_TOLERANCE = 5.0;

  /** Tick marks are drawn exactly: they may lie this far off the scale, in points and pixels. */
  private static final double PATH_TOLERANCE = 0.4;

  private static final double PIXEL_TOLERANCE = 1.3;

  /** Error of a scale through tick marks that a fit cannot show, in points and pixels. */
  private static final double PATH_FLOOR = 0.05;

  private static final double PIXEL_FLOOR = 0.3;

  /**
   * The middle of a number's box against the place it marks, as a share of its height: fonts set
   * digits above or below the middle of the line.
   */
  private static final double OFF_MIDDLE = 0.15;

  /** Words closer than this, in heights of a line, go on with the number. */
  private static final double BESIDE = 0.6;

  private static final double BESIDE_SAMPLE = 3;

  /** The numbers of an axis reach over more of it than this. */
  private static final double LEAST_REACH = 0.4;

  /** Marks closer than this share of the distance of two numbers stand between them. */
  private static final double SPARSE = 0.6;

  /** Of two axes' marks on one side of a plot, two can stand at numbers by chance. */
  private static final int LEAST_TIED = 3;

  private final Plot plot;
  private final Box frame;

  AxisScales(Plot plot) {
    this.plot = plot;
    this.frame = plot.frame();
  }

  /** What the numbers along one side come to. */
  record Found(List<ReadAxis> axes, List<TickLabel> without) {
    Found {
      axes = List.copyOf(axes);
      without = List.copyOf(without);
    }
  }

  /**
   * The axes on one side, the nearest to the frame first; of rows of numbers under a plot only the
   * one that makes the best scale. Numbers that make no scale come back as such.
   */
  Found on(Side side, List<TickLabel> labels) {
    List<ReadAxis> axes = new ArrayList<>();
    List<TickLabel> without = new ArrayList<>();
    for (List<TickLabel> group : groups(side, labels)) {
      Optional<ReadAxis> axis = axis(side, group);
      boolean believable = axis.isPresent() && isBelievable(axis.get(), group.size());
      if (believable) {
        axes.add(axis.get());
      } else {
        without.addAll(group);
      }
    }
    if (side.level() && axes.size() > 1) {
      axes.sort(Comparator.comparingInt((ReadAxis axis) -> -axis.fit().in().size()));
      axes.subList(1, axes.size()).clear();
    }
    return new Found(axes, without);
  }

  /** Two numbers of many that happen to fit are no scale. */
  private boolean isBelievable(ReadAxis axis, int labels) {
    List<ScaleFit.Mark> marks = axis.fit().in();
    int in = marks.size();
    double reach = Math.abs(marks.get(in - 1).at() - marks.get(0).at());
    double length = axis.side().level() ? frame.width() : frame.height();
    boolean second = axis.side() == Side.RIGHT || axis.side() == Side.TOP;
    int needed = second ? labels - labels / 6 : labels / 2 + 1;
    return (in == labels || (in >= 3 && in >= needed))
        && (reach >= LEAST_REACH * length || !second);
  }

  /** Rows below or above, columns beside the frame; nearest first. */
  private List<List<TickLabel>> groups(Side side, List<TickLabel> labels) {
    List<TickLabel> near = new ArrayList<>();
    for (TickLabel label : labels) {
      if (belongs(side, label.box()) && isBare(label)) {
        near.add(label);
      }
    }
    near.sort(Comparator.comparingDouble(label -> side.outside(label.box(), frame)));
    List<List<TickLabel>> groups = new ArrayList<>();
    for (TickLabel label : near) {
      List<TickLabel> home = null;
      for (List<TickLabel> group : groups) {
        if (home == null && inLine(side, group, label)) {
          home = group;
        }
      }
      if (home == null) {
        home = new ArrayList<>();
        groups.add(home);
      }
      home.add(label);
    }
    groups.forEach(group -> group.sort(Comparator.comparingDouble(l -> side.along(l.box()))));
    return groups;
  }

  /** A rate or a number that goes on in words or belongs to a sample is no number of an axis. */
  private boolean isBare(TickLabel label) {
    if (label.unit() != null && label.unit().dimension() == Dimension.RATE) {
      return false;
    }
    Box box = label.box();
    for (Word word : plot.words()) {
      boolean beside =
          !label.words().contains(word)
              && word.turn() == 0
              && isBeside(box, word.box(), BESIDE, Math.min(box.height(), word.box().height()));
      if (beside && word.text().chars().anyMatch(Character::isLetter)) {
        return false;
      }
    }
    return plot.samples().stream()
        .noneMatch(sample -> isBeside(box, sample.box(), BESIDE_SAMPLE, box.height()));
  }

  /**
   * Whether two boxes stand side by side on a line.
   *
   * @param most the widest gap, in heights of the line
   */
  private static boolean isBeside(Box box, Box other, double most, double line) {
    double gap = Math.max(other.x() - box.right(), box.x() - other.right());
    return gap > -0.5 * line
        && gap < most * line
        && Math.abs(box.centreY() - other.centreY()) < 0.5 * line;
  }

  private boolean belongs(Side side, Box box) {
    double height = box.height();
    double outside = side.outside(box, frame);
    double farthest = side == Side.RIGHT ? FARTHEST / 2 : FARTHEST;
    if (outside < -0.6 * height || outside > farthest * height) {
      return false;
    }
    double along = side.along(box);
    double slack = 1.5 * height;
    return side.level()
        ? box.right() > frame.x() - slack
            && box.x() < frame.right() + slack
            && along > frame.x() - 2 * slack
            && along < frame.right() + 2 * slack
        : along > frame.y() - slack && along < frame.bottom() + slack;
  }

  private static boolean inLine(Side side, List<TickLabel> group, TickLabel label) {
    for (TickLabel member : group) {
      boolean aligned =
          side.level()
              ? member.box().sharedHeight(label.box()) > 0.5
              : member.box().sharedWidth(label.box()) > 0.5;
      if (aligned && apart(side, member, label)) {
        return true;
      }
    }
    return false;
  }

  private static boolean apart(Side side, TickLabel one, TickLabel other) {
    return Math.abs(side.along(one.box()) - side.along(other.box())) > 0.5 * one.box().height();
  }

  private Optional<ReadAxis> axis(Side side, List<TickLabel> labels) {
    double height = labels.stream().mapToDouble(l -> l.box().height()).average().orElse(0);
    List<Double> middles = labels.stream().map(l -> side.along(l.box())).toList();
    Loose loose = loose(labels, middles, OFF_MIDDLE * height + drawnFloor());
    boolean aslant = labels.stream().anyMatch(TickLabel::aslant);
    if (aslant && side.level()) {
      height = labels.stream().mapToDouble(l -> l.words().get(0).size()).average().orElse(0);
      boolean rising = labels.stream().anyMatch(TickLabel::rises);
      Loose other = atEnds(labels, !rising, height);
      loose = atEnds(labels, rising, height).unlessBetter(other).unlessBetter(loose);
    }
    if (loose.fit().isEmpty()) {
      return Optional.empty();
    }
    ScaleFit.Fit fit = loose.fit().get();
    boolean clear = !aslant || isSparse(side, loose.distance());
    Optional<ScaleFit.Fit> tied =
        clear ? tied(side, fit, loose.distance(), height) : Optional.empty();
    boolean onTicks = tied.isPresent();
    Box box = Box.around(tied.orElse(fit).in().stream().map(mark -> mark.label().box()).toList());
    return Optional.of(new ReadAxis(side, tied.orElse(fit), onTicks, box, List.of(), null, null));
  }

  /** A scale through the places where numbers stand. */
  private record Loose(Optional<ScaleFit.Fit> fit, double distance) {
    /** This one, unless more numbers agree with another, or do so far more closely. */
    Loose unlessBetter(Loose other) {
      if (fit.isEmpty() || other.fit.isEmpty()) {
        return fit.isEmpty() ? other : this;
      }
      int more = other.fit.get().in().size() - fit.get().in().size();
      boolean closer = other.fit.get().deviation() < fit.get().deviation() / 2;
      return more > 0 || more == 0 && closer ? other : this;
    }
  }

  private Loose atEnds(List<TickLabel> labels, boolean last, double size) {
    List<Double> ends = labels.stream().map(label -> label.end(last)).toList();
    return loose(labels, ends, OFF_MIDDLE * size + drawnFloor());
  }

  private Loose loose(List<TickLabel> labels, List<Double> places, double floor) {
    List<ScaleFit.Mark> marks = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      marks.add(new ScaleFit.Mark(places.get(i), labels.get(i)));
    }
    marks.sort(Comparator.comparingDouble(ScaleFit.Mark::at));
    double distance = medianDistance(marks);
    double tolerance = Math.max(LEAST_TOLERANCE, Math.min(GREATEST_TOLERANCE, HAND_SET * distance));
    return new Loose(ScaleFit.of(marks, tolerance, floor), distance);
  }

  /** Whether no marks stand between those of the numbers, so that none is taken for another. */
  private boolean isSparse(Side side, double distance) {
    List<Double> ticks = ticks(side);
    List<Double> gaps = new ArrayList<>();
    for (int i = 1; i < ticks.size(); i++) {
      gaps.add(ticks.get(i) - ticks.get(i - 1));
    }
    double gap = median(gaps);
    return !Double.isNaN(gap) && gap > SPARSE * distance;
  }

  private double drawnFloor() {
    return plot.ink() == PlotInk.PATHS ? PATH_FLOOR : PIXEL_FLOOR * plot.pixel();
  }

  private double drawnTolerance() {
    return plot.ink() == PlotInk.PATHS ? PATH_TOLERANCE : PIXEL_TOLERANCE * plot.pixel() + 0.2;
  }

  /**
   * The scale through the tick marks the numbers stand at. All numbers of an axis are set off from
   * their marks by about the same, or the marks are not theirs.
   */
  private Optional<ScaleFit.Fit> tied(
      Side side, ScaleFit.Fit loose, double distance, double height) {
    List<Double> ticks = ticks(side);
    List<ScaleFit.Mark> tied = new ArrayList<>();
    List<Double> shifts = new ArrayList<>();
    for (ScaleFit.Mark mark : loose.in()) {
      double nearest = nearest(ticks, mark.at());
      shifts.add(nearest - mark.at());
    }
    double shift = median(shifts);
    double most = Math.min(0.3 * distance, 0.8 * height);
    if (Double.isNaN(shift) || Math.abs(shift) > most) {
      return Optional.empty();
    }
    double slack = Math.max(LEAST_TOLERANCE, Math.min(HAND_SET * distance, 0.5 * height));
    for (ScaleFit.Mark mark : loose.in()) {
      double nearest = nearest(ticks, mark.at() + shift);
      if (Math.abs(nearest - mark.at() - shift) <= slack) {
        tied.add(new ScaleFit.Mark(nearest, mark.label()));
      }
    }
    int all = loose.in().size();
    int needed = Math.max(Math.min(all, LEAST_TIED), (int) Math.ceil(0.5 * all));
    return ScaleFit.of(tied, drawnTolerance(), drawnFloor())
        .filter(fit -> fit.in().size() >= needed)
        .filter(fit -> fit.scale().logarithmic() == loose.scale().logarithmic())
        .map(fit -> withOutvoted(fit, loose));
  }

  /** Numbers the tick marks do not bear out but the middles did are no slips of reading. */
  private static ScaleFit.Fit withOutvoted(ScaleFit.Fit fit, ScaleFit.Fit loose) {
    return new ScaleFit.Fit(fit.scale(), fit.in(), loose.out(), fit.deviation());
  }

  /** Tick marks and grid lines, and the ends of the frame where none stands there. */
  private List<Double> ticks(Side side) {
    List<Double> ticks = new ArrayList<>(side.level() ? plot.uprights() : plot.levels());
    double first = side.level() ? frame.x() : frame.y();
    double last = side.level() ? frame.right() : frame.bottom();
    for (double end : new double[] {first, last}) {
      if (ticks.stream().noneMatch(tick -> Math.abs(tick - end) < 0.8)) {
        ticks.add(end);
      }
    }
    Collections.sort(ticks);
    return ticks;
  }

  private static double nearest(List<Double> ticks, double at) {
    double nearest = Double.NaN;
    for (double tick : ticks) {
      if (Double.isNaN(nearest) || Math.abs(tick - at) < Math.abs(nearest - at)) {
        nearest = tick;
      }
    }
    return nearest;
  }

  private static double medianDistance(List<ScaleFit.Mark> marks) {
    List<Double> distances = new ArrayList<>();
    for (int i = 1; i < marks.size(); i++) {
      distances.add(marks.get(i).at() - marks.get(i - 1).at());
    }
    double median = median(distances);
    return Double.isNaN(median) ? 0 : median;
  }

  private static double median(List<Double> numbers) {
    if (numbers.isEmpty()) {
      return Double.NaN;
    }
    List<Double> sorted = new ArrayList<>(numbers);
    Collections.sort(sorted);
    return sorted.get(sorted.size() / 2);
  }
}
