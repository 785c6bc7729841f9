package commonsheet.chart.axis;

import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.text.Phrase;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads the axes of a plot: scales first, then what they show. */
public final class AxesReader {
  /** Words closer than this, in heights of a line, are one title. */
  private static final double TITLE_GAP = 1.0;

  private static final int LEAST_OF_A_FURTHER = 3;

  private final Plot plot;

  public AxesReader(Plot plot) {
    this.plot = plot;
  }

  /** The axes by the style of numbers that makes more of them fit. */
  public PlotAxes read() {
    PlotAxes points = read(false);
    boolean commas = plot.words().stream().anyMatch(word -> word.text().matches(".*\\d,\\d.*"));
    if (!commas) {
      return points;
    }
    PlotAxes withCommas = read(true);
    return fitting(withCommas) > fitting(points) ? withCommas : points;
  }

  private static int fitting(PlotAxes axes) {
    int in = axes.x() == null ? 0 : axes.x().fit().in().size();
    return in + axes.ys().stream().mapToInt(axis -> axis.fit().in().size()).sum();
  }

  private PlotAxes read(boolean decimalComma) {
    List<TickLabel> labels = new TickLabels(decimalComma).among(plot.words());
    AxisScales scales = new AxisScales(plot);
    AxisScales.Found below = scales.on(Side.BOTTOM, labels);
    AxisScales.Found above =
        below.axes().isEmpty()
            ? scales.on(Side.TOP, labels)
            : new AxisScales.Found(List.of(), List.of());
    List<ReadAxis> level = below.axes().isEmpty() ? above.axes() : below.axes();
    List<TickLabel> free = without(labels, level);
    AxisScales.Found left = scales.on(Side.LEFT, free);
    AxisScales.Found right = scales.on(Side.RIGHT, free);
    List<ReadAxis> upright = new ArrayList<>(borneOut(left.axes()));
    right.axes().stream().filter(axis -> !isMirrored(axis, left.axes())).forEach(upright::add);

    Set<Word> claimed = new HashSet<>();
    level.forEach(axis -> claimed.addAll(words(axis)));
    borneOut(left.axes()).forEach(axis -> claimed.addAll(words(axis)));
    right.axes().forEach(axis -> claimed.addAll(words(axis)));
    List<String> faults = new ArrayList<>();
    if (level.isEmpty()) {
      faults.add(fault(Side.BOTTOM, below.without()));
    }
    if (upright.isEmpty()) {
      faults.add(fault(Side.LEFT, left.without().isEmpty() ? right.without() : left.without()));
    }
    return titled(level, upright, claimed, faults);
  }

  /** Two numbers farther out than an axis are no further one: a line of text on its side. */
  private static List<ReadAxis> borneOut(List<ReadAxis> axes) {
    return axes.stream()
        .filter(axis -> axis.equals(axes.get(0)) || axis.fit().in().size() >= LEAST_OF_A_FURTHER)
        .toList();
  }

  private PlotAxes titled(
      List<ReadAxis> level, List<ReadAxis> upright, Set<Word> claimed, List<String> faults) {
    List<Word> rest = plot.words().stream().filter(word -> !claimed.contains(word)).toList();
    List<Box> walls = plot.samples().stream().map(Sample::box).toList();
    List<Phrase> phrases =
        Phrase.among(rest, TITLE_GAP, walls).stream().filter(phrase -> !inLegend(phrase)).toList();
    AxisTitles titles = new AxisTitles(plot.frame(), phrases);
    ReadAxis x = level.isEmpty() ? null : titles.titled(level.get(0), null);
    List<ReadAxis> ys = new ArrayList<>();
    for (int i = 0; i < upright.size(); i++) {
      ReadAxis axis = upright.get(i);
      ys.add(titles.titled(axis, nextOnSide(upright, i)));
    }
    List<Box> boxes = new ArrayList<>(List.of(plot.frame()));
    for (Phrase phrase : titles.claimed()) {
      claimed.addAll(phrase.words());
      boxes.add(phrase.box());
    }
    level.forEach(axis -> boxes.add(axis.box()));
    upright.forEach(axis -> boxes.add(axis.box()));
    List<String> outvoted = new ArrayList<>();
    level.forEach(axis -> outvoted.addAll(outvoted(axis)));
    upright.forEach(axis -> outvoted.addAll(outvoted(axis)));
    return new PlotAxes(x, ys, claimed, Box.around(boxes), faults, outvoted);
  }

  /** Words behind a sample name a curve, not an axis. */
  private boolean inLegend(Phrase phrase) {
    double line = phrase.lineHeight();
    for (Sample sample : plot.samples()) {
      double behind = phrase.box().x() - sample.box().right();
      boolean level = Math.abs(phrase.box().centreY() - sample.box().centreY()) < 0.6 * line;
      if (phrase.turn() == 0 && level && behind > -0.5 * line && behind < 3 * line) {
        return true;
      }
    }
    return false;
  }

  /** The numbers of the next axis on the same side, beyond which no title of this one stands. */
  private static Box nextOnSide(List<ReadAxis> axes, int index) {
    for (int i = index + 1; i < axes.size(); i++) {
      if (axes.get(i).side() == axes.get(index).side()) {
        return axes.get(i).box();
      }
    }
    return null;
  }

  /** A right axis that only repeats the left one. */
  private boolean isMirrored(ReadAxis axis, List<ReadAxis> left) {
    double top = plot.frame().y();
    double bottom = plot.frame().bottom();
    for (ReadAxis other : left) {
      double span = Math.abs(other.scale().value(top) - other.scale().value(bottom));
      double off =
          Math.max(
              Math.abs(other.scale().value(top) - axis.scale().value(top)),
              Math.abs(other.scale().value(bottom) - axis.scale().value(bottom)));
      if (off < 0.03 * span) {
        return true;
      }
    }
    return false;
  }

  private static List<TickLabel> without(List<TickLabel> labels, List<ReadAxis> axes) {
    Set<TickLabel> used = new HashSet<>();
    axes.forEach(axis -> axis.fit().in().forEach(mark -> used.add(mark.label())));
    return labels.stream().filter(label -> !used.contains(label)).toList();
  }

  private static List<Word> words(ReadAxis axis) {
    List<Word> words = new ArrayList<>();
    axis.fit().in().forEach(mark -> words.addAll(mark.label().words()));
    axis.fit().out().forEach(mark -> words.addAll(mark.label().words()));
    return words;
  }

  private String fault(Side side, List<TickLabel> labels) {
    String axis = side.level() ? "x axis" : "y axis";
    if (labels.isEmpty()) {
      return "no numbers could be read along its " + axis;
    }
    if (labels.size() == 1) {
      return "only one number (" + labels.get(0).text() + ") could be read along its " + axis;
    }
    if (labels.stream().mapToDouble(TickLabel::value).distinct().count() == 1) {
      return "all numbers along its " + axis + " are the same (" + labels.get(0).text() + ")";
    }
    List<String> texts = labels.stream().map(TickLabel::text).limit(8).toList();
    return "the numbers along its "
        + axis
        + " ("
        + String.join(", ", texts)
        + ") lie on no straight or logarithmic scale";
  }

  private static List<String> outvoted(ReadAxis axis) {
    List<String> sentences = new ArrayList<>();
    for (ScaleFit.Mark mark : axis.fit().out()) {
      sentences.add(
          "\""
              + mark.label().text()
              + "\" beside the "
              + axis.side().printed()
              + " does not fit the other "
              + axis.fit().in().size()
              + " numbers of its scale");
    }
    return sentences;
  }
}
