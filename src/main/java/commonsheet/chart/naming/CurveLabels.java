package commonsheet.chart.naming;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.text.ChartText;
import commonsheet.chart.text.Phrase;
import commonsheet.record.Conditions;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the words that name curves: beside samples, at the end of pointers, or in the plot. */
public final class CurveLabels {
  /** "A: 0.2C" in a note explains the letter at a curve. */
  private static final Pattern EXPLAINED =
      Pattern.compile("[(\\[]?([A-Za-z①-⑳])[)\\]]?\\s*[:=.：]\\s*(\\S.*)");

  /** Words stand no farther behind their sample than this, in heights of a line. */
  private static final double BEHIND_SAMPLE = 3;

  /** Recognised words can take in the end of their sample. */
  private static final double OVER_SAMPLE = 2.5;

  /** Longest level bar of a letter in heights of its word. */
  private static final double LONGEST_BAR = 1.5;

  private static final double POINTER_REACH = 0.9;

  private final Plot plot;
  private final List<Phrase> phrases;
  private final LabelReader reader;

  /**
   * @param phrases what is neither number, title nor caption of the chart
   */
  public CurveLabels(Plot plot, List<Phrase> phrases, LabelReader reader) {
    this.plot = plot;
    this.phrases = phrases;
    this.reader = reader;
  }

  /** The labels in reading order. */
  public List<CurveLabel> find() {
    Map<Phrase, List<Sample>> samples = besideSamples();
    Map<String, LabelMeaning> letters = explained();
    List<CurveLabel> labels = new ArrayList<>();
    for (Phrase phrase : merged(samples)) {
      List<Sample> shown = samples.getOrDefault(phrase, List.of());
      List<Pointer> pointers = pointers(phrase);
      LabelMeaning meaning = letters.get(ChartText.folded(phrase.text()));
      meaning = meaning == null ? meaning(phrase) : meaning;
      boolean inReach = inReach(phrase.box());
      boolean names = !shown.isEmpty() || (inReach && says(meaning));
      if (names && phrase.turn() == 0 && !isNumber(phrase)) {
        labels.add(new CurveLabel(phrase, meaning, shown, pointers));
      }
    }
    return LostPoints.ofFamily(LostUnits.ofFamily(settled(labels), reader), reader);
  }

  /** Signs seen before recognised words are the end of their sample, behind them a leader's. */
  private LabelMeaning meaning(Phrase phrase) {
    String text = phrase.text();
    String bare = text.replaceAll("^[^\\p{L}\\p{N}+-]+|[-\\s/|\\\\_~—–.]+$", "");
    if (!phrase.recognised()) {
      return reader.read(text);
    }
    String mended = LostPoints.behindNought(bare).replaceAll("^[Il|](?=\\s?C$)", "1");
    LabelMeaning meaning = reader.read(mended);
    return mended.equals(bare) ? meaning : meaning.unclear();
  }

  /** A bare number is no label: it has strayed from an axis, or says nothing. */
  private static boolean isNumber(Phrase phrase) {
    return ChartText.folded(phrase.text()).matches("[-+=~.·\\s]*[0-9.,\\s]*[-=~.·\\s]*");
  }

  /** A voltage alone is a mark on the chart, not the name of a curve. */
  private static boolean says(LabelMeaning meaning) {
    boolean onlyVoltage =
        meaning.conditions().values().keySet().stream().allMatch(name -> name.endsWith("Voltage"));
    return meaning.plain() && !meaning.isEmpty() && (!onlyVoltage || meaning.measure() != null);
  }

  private boolean inReach(Box box) {
    Box frame = plot.frame();
    double slackX = Math.max(0.25 * frame.width(), 30);
    double slackY = Math.max(0.08 * frame.height(), 10);
    return box.x() > frame.x() - box.height()
        && box.x() < frame.right() + slackX
        && box.centreY() > frame.y() - slackY
        && box.centreY() < frame.bottom() + slackY;
  }

  /** Each sample's words: on its line, close behind it, or else close before it. */
  private Map<Phrase, List<Sample>> besideSamples() {
    Map<Phrase, List<Sample>> beside = new LinkedHashMap<>();
    for (Sample sample : plot.samples()) {
      if (isWriting(sample)) {
        continue;
      }
      Phrase nearest = null;
      double least = Double.MAX_VALUE;
      for (Phrase phrase : phrases) {
        double away = away(sample, phrase);
        if (away < least) {
          nearest = phrase;
          least = away;
        }
      }
      if (nearest != null) {
        beside.computeIfAbsent(nearest, none -> new ArrayList<>()).add(sample);
      }
    }
    return beside;
  }

  /** Part of a letter taken for a sample. */
  private boolean isWriting(Sample sample) {
    double x = sample.box().centreX();
    double y = sample.box().centreY();
    return plot.words().stream()
        .anyMatch(
            word ->
                word.box().contains(x, y)
                    && word.text().chars().anyMatch(Character::isLetterOrDigit)
                    && isBars(sample, word));
  }

  /** Bars of one letter, or of several that look like dashes. */
  private static boolean isBars(Sample sample, Word word) {
    return sample.style().dash() == InkStyle.Dash.SOLID
        ? sample.box().width() < LONGEST_BAR * word.box().height()
        : sample.box().width() < word.box().width();
  }

  private static double away(Sample sample, Phrase phrase) {
    double line = phrase.lineHeight();
    double across = Math.abs(sample.box().centreY() - phrase.box().centreY());
    if (phrase.turn() != 0 || across > 0.7 * line) {
      return Double.MAX_VALUE;
    }
    double behind = phrase.box().x() - sample.box().right();
    double before = sample.box().x() - phrase.box().right();
    boolean seenTogether =
        phrase.recognised()
            && behind > -OVER_SAMPLE * line
            && phrase.box().centreX() > sample.box().right();
    if (seenTogether || (behind > -0.6 * line && behind < BEHIND_SAMPLE * line)) {
      return Math.max(0, behind);
    }
    return before > -0.6 * line && before < BEHIND_SAMPLE * line
        ? Math.max(0, before) + BEHIND_SAMPLE * line
        : Double.MAX_VALUE;
  }

  /** Labels on two lines made one: a rate with its current, a current with its temperature. */
  private List<Phrase> merged(Map<Phrase, List<Sample>> samples) {
    List<Phrase> merged = new ArrayList<>();
    List<Phrase> taken = new ArrayList<>();
    for (Phrase phrase : phrases) {
      if (taken.contains(phrase)) {
        continue;
      }
      Phrase below = samples.containsKey(phrase) ? null : below(phrase, taken);
      if (below != null && !samples.containsKey(below)) {
        taken.add(below);
        merged.add(phrase.followedBy(below));
      } else {
        merged.add(phrase);
      }
    }
    return merged;
  }

  private Phrase below(Phrase phrase, List<Phrase> taken) {
    LabelMeaning upper = reader.read(phrase.text());
    if (upper.conditions().isEmpty() || phrase.turn() != 0) {
      return null;
    }
    for (Phrase other : phrases) {
      double gap = other.box().y() - phrase.box().bottom();
      boolean under =
          other.turn() == 0
              && gap > -0.4 * phrase.lineHeight()
              && gap < 0.5 * phrase.lineHeight()
              && phrase.box().sharedWidth(other.box()) > 0.6;
      LabelMeaning lower = under && !taken.contains(other) ? reader.read(other.text()) : null;
      if (lower != null && lower.plain() && completes(upper.conditions(), lower.conditions())) {
        return other;
      }
    }
    return null;
  }

  private static boolean completes(Conditions upper, Conditions lower) {
    return !lower.isEmpty()
        && lower.values().keySet().stream().noneMatch(name -> upper.get(name) != null);
  }

  private Map<String, LabelMeaning> explained() {
    Map<String, LabelMeaning> letters = new HashMap<>();
    for (Phrase phrase : phrases) {
      Matcher note = EXPLAINED.matcher(phrase.text());
      if (note.matches()) {
        LabelMeaning meaning = reader.read(note.group(2));
        if (!meaning.isEmpty()) {
          letters.put(ChartText.folded(note.group(1)), meaning);
        }
      }
    }
    return letters;
  }

  /** The pointers that begin at a label, each with its near end first. */
  private List<Pointer> pointers(Phrase phrase) {
    List<Pointer> leading = new ArrayList<>();
    double reach = POINTER_REACH * phrase.lineHeight();
    for (Pointer pointer : plot.pointers()) {
      double from = distance(phrase.box(), pointer.from());
      double to = distance(phrase.box(), pointer.to());
      if (Math.min(from, to) <= reach && nearest(pointer, Math.min(from, to))) {
        boolean turned = to < from && !pointer.arrow();
        leading.add(
            turned ? new Pointer(pointer.to(), pointer.from(), false, pointer.rgb()) : pointer);
      }
    }
    return leading;
  }

  /** No other words stand nearer to the pointer. */
  private boolean nearest(Pointer pointer, double away) {
    for (Phrase phrase : phrases) {
      double from = distance(phrase.box(), pointer.from());
      double to = distance(phrase.box(), pointer.to());
      if (Math.min(from, to) < away - 1e-6 && !reader.read(phrase.text()).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  public static double distance(Box box, Point point) {
    double dx = Math.max(0, Math.max(box.x() - point.x(), point.x() - box.right()));
    double dy = Math.max(0, Math.max(box.y() - point.y(), point.y() - box.bottom()));
    return Math.hypot(dx, dy);
  }

  /** A bare C is what the other labels of the family are. */
  private List<CurveLabel> settled(List<CurveLabel> labels) {
    boolean temperatures = false;
    boolean rates = false;
    for (CurveLabel label : labels) {
      Double loneC = label.meaning().loneC();
      Conditions said = label.meaning().conditions();
      temperatures |= loneC == null ? said.get(Conditions.TEMPERATURE) != null : loneC <= 0;
      rates |= loneC == null ? said.get(reader.rate()) != null : loneC > 0 && loneC < 5;
    }
    if (temperatures == rates) {
      return labels;
    }
    String name = temperatures ? Conditions.TEMPERATURE : reader.rate();
    return labels.stream()
        .map(
            label ->
                label.meaning().loneC() == null
                    ? label
                    : label.meaning(label.meaning().loneCAs(name)))
        .toList();
  }
}
