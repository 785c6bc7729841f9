package commonsheet.chart.axis;

import commonsheet.chart.text.AxisMeasure;
import commonsheet.chart.text.ChartText;
import commonsheet.chart.text.ChartWords;
import commonsheet.chart.text.Measure;
import commonsheet.chart.text.Phrase;
import commonsheet.chart.text.TitleReader;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.TradeUnit;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds the titles of a plot's axes among the phrases around it. */
final class AxisTitles {
  /** A title stands no farther from the numbers of its axis than this, in heights of a line. */
  private static final double FARTHEST = 5;

  private final Box frame;
  private final List<Phrase> phrases;
  private final Set<Phrase> claimed = new LinkedHashSet<>();

  AxisTitles(Box frame, List<Phrase> phrases) {
    this.frame = frame;
    this.phrases = phrases;
  }

  /** The phrases found to be titles. */
  Set<Phrase> claimed() {
    return claimed;
  }

  /** The axis with what its title, or the units beside its numbers, say it shows. */
  ReadAxis titled(ReadAxis axis, Box others) {
    List<AxisMeasure> measures = new ArrayList<>();
    List<String> printed = new ArrayList<>();
    List<Phrase> beside = beside(axis, others);
    if (beside.isEmpty() && !axis.side().level()) {
      beside = onTop(axis);
    }
    for (Phrase phrase : beside) {
      for (AxisMeasure measure : read(phrase)) {
        if (measures.stream().noneMatch(known -> known.measure().equals(measure.measure()))) {
          measures.add(measure);
        }
      }
      printed.add(phrase.text());
      claimed.add(phrase);
    }
    return fromTicks(axis, measures, printed.isEmpty() ? null : String.join(" ", printed));
  }

  /** The phrases along an axis that name a quantity, nearest first, together one title. */
  private List<Phrase> beside(ReadAxis axis, Box others) {
    List<Phrase> near = new ArrayList<>();
    for (Phrase phrase : phrases) {
      if (!claimed.contains(phrase) && stands(axis, phrase, others) && isTitle(phrase)) {
        near.add(phrase);
      }
    }
    near.sort(Comparator.comparingDouble(phrase -> distance(axis, phrase)));
    List<Phrase> title = new ArrayList<>();
    for (Phrase phrase : near) {
      if (title.isEmpty() || isNextLine(axis, title.get(title.size() - 1), phrase)) {
        title.add(phrase);
      }
    }
    return title;
  }

  /** Set in the same size, close behind, or on the same line. */
  private static boolean isNextLine(ReadAxis axis, Phrase last, Phrase phrase) {
    double line = last.lineHeight();
    double gap = distance(axis, phrase) - distance(axis, last);
    double ratio = phrase.lineHeight() / line;
    return gap < 1.8 * line && ratio > 0.75 && ratio < 1.33;
  }

  private boolean stands(ReadAxis axis, Phrase phrase, Box others) {
    Side side = axis.side();
    double line = phrase.lineHeight();
    double off = distance(axis, phrase);
    boolean turned = phrase.turn() != 0;
    if (off < -0.6 * line || off > FARTHEST * line || (side.level() && turned)) {
      return false;
    }
    double along = side.along(phrase.box());
    if (side.level()) {
      return along > frame.x() && along < frame.right() + 3 * line;
    }
    boolean beyond = others != null && side.outside(phrase.box(), others) > -line;
    return !beyond && along > frame.y() - 2 * line && along < frame.bottom() + 2 * line;
  }

  private static double distance(ReadAxis axis, Phrase phrase) {
    return axis.side().outside(phrase.box(), axis.box());
  }

  /** A level title over a column of numbers. */
  private List<Phrase> onTop(ReadAxis axis) {
    for (Phrase phrase : phrases) {
      Box box = phrase.box();
      double line = phrase.lineHeight();
      double above = Math.min(frame.y(), axis.box().y()) - box.bottom();
      boolean over =
          phrase.turn() == 0
              && above > -0.5 * line
              && above < 2 * line
              && box.x() < axis.box().right() + 2 * line
              && box.right() > axis.box().x() - 2 * line
              && box.width() < 0.4 * frame.width();
      if (over && !claimed.contains(phrase) && isTitle(phrase)) {
        return List.of(phrase);
      }
    }
    return List.of();
  }

  /** Names a quantity, and says nothing with a number in it: "Temp.: 25 °C" is no title. */
  private static boolean isTitle(Phrase phrase) {
    String text = ChartText.folded(phrase.text());
    return text.length() <= 80
        && !text.matches(".*\\d\\s*(V|m?A|°C|C|It)\\b.*")
        && !read(phrase).isEmpty();
  }

  /** One or two signs on their side are more often a misread word than a unit. */
  private static List<AxisMeasure> read(Phrase phrase) {
    if (phrase.recognised() && phrase.turn() != 0 && phrase.text().length() < 3) {
      return List.of();
    }
    return phrase.recognised()
        ? TitleReader.readRecognised(phrase.text())
        : TitleReader.read(phrase.text());
  }

  /** Units behind the numbers settle what the title leaves open, or stand for a title. */
  private static ReadAxis fromTicks(ReadAxis axis, List<AxisMeasure> measures, String printed) {
    TradeUnit unit = null;
    for (ScaleFit.Mark mark : axis.fit().in()) {
      unit = unit == null ? mark.label().unit() : unit;
    }
    if (unit == null && measures.isEmpty() && !axis.side().level() && AxisUnits.areVolts(axis)) {
      AxisMeasure volts = new AxisMeasure(new Measure("voltage", "V"), null);
      return axis.titled(
          List.of(volts), null, "The y axis has no title; its numbers are taken for volts.");
    }
    if (unit == null) {
      return axis.titled(measures, printed, null);
    }
    ChartWords words = ChartWords.standard();
    List<AxisMeasure> settled = new ArrayList<>();
    for (AxisMeasure measure : measures) {
      boolean fits = measure.unit() == null && words.fits(measure.measure(), unit.dimension());
      settled.add(fits ? new AxisMeasure(measure.measure(), unit) : measure);
    }
    TradeUnit plain = lone(unit);
    Measure alone = words.measuredIn(plain.dimension());
    if (settled.isEmpty() && alone != null) {
      settled.add(new AxisMeasure(alone, plain));
    }
    return axis.titled(settled, printed, null);
  }

  /** "20C" beside an axis is a temperature. */
  private static TradeUnit lone(TradeUnit unit) {
    return unit.dimension() == Dimension.RATE ? new TradeUnit("Cel", Dimension.TEMPERATURE) : unit;
  }
}
