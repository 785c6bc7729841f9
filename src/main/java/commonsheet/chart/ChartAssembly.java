package commonsheet.chart;

import commonsheet.chart.axis.PlotAxes;
import commonsheet.chart.axis.ReadAxis;
import commonsheet.chart.naming.CurveGeometry;
import commonsheet.chart.naming.CurveLabel;
import commonsheet.chart.naming.CurveLabels;
import commonsheet.chart.naming.LabelReader;
import commonsheet.chart.naming.Lines;
import commonsheet.chart.naming.NamedTrace;
import commonsheet.chart.naming.Naming;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.chart.text.ChartKind;
import commonsheet.chart.text.Phrase;
import commonsheet.quantity.NumberStyle;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts one chart together from its axes, its lines and its words. */
final class ChartAssembly {
  private static final String SOURCE = "common practice, no source";

  /** Words of one label stand closer than this, in heights of a line. */
  private static final double LABEL_GAP = 0.75;

  /** Words of a caption can be set wide. */
  private static final double CAPTION_GAP = 3;

  /** Words of a legend stand no farther behind their sample than this, in heights of a line. */
  private static final double BEHIND_SAMPLE = 3;

  private final Plot plot;
  private final PlotAxes axes;
  private final List<Word> words;
  private final Double capacity;
  private final NumberStyle style;

  ChartAssembly(Plot plot, PlotAxes axes, List<Word> words, Double capacity) {
    this.plot = plot;
    this.axes = axes;
    this.words = words;
    this.capacity = capacity;
    this.style =
        NumberStyle.of(plot.words().stream().map(Word::text).collect(Collectors.joining(" ")));
  }

  Chart chart() {
    List<Box> walls = plot.samples().stream().map(Sample::box).toList();
    List<Box> parts = new ArrayList<>(walls);
    parts.add(axes.whole());
    Captions.Read captions =
        new Captions(
                Box.around(parts),
                Phrase.among(words, CAPTION_GAP, walls).stream()
                    .filter(phrase -> !isInLegend(phrase))
                    .toList(),
                style)
            .read();
    Lines lines = new Lines(plot);
    List<Trace> traces = lines.curves();
    ChartKind kind = kind(captions, traces);
    List<Finding> findings = new ArrayList<>();
    List<Curve> curves = new ArrayList<>();
    Conditions common = CommonConditions.of(kind, captions.said());
    if (axes.faults().isEmpty()) {
      List<NamedTrace> named = named(traces, lines.leaders(), captions, kind);
      curves.addAll(new CurveFamily(plot, axes, kind, common, capacity).curves(named, findings));
    } else {
      findings.add(noScale());
    }
    findings.addAll(told(lines, traces, curves));
    return new Chart(
        plot.page(), plot.frame(), captions.title(), kind.label(), common, curves, findings);
  }

  private List<NamedTrace> named(
      List<Trace> traces, List<Pointer> leaders, Captions.Read captions, ChartKind kind) {
    Set<Word> said = new HashSet<>();
    captions.lines().forEach(line -> said.addAll(line.words()));
    List<Box> walls = plot.samples().stream().map(Sample::box).toList();
    List<Word> rest =
        words.stream().filter(word -> !said.contains(word) && !isSample(word)).toList();
    List<Phrase> phrases = new ArrayList<>(Phrase.among(rest, LABEL_GAP, walls));
    phrases.removeIf(phrase -> phrase.text().equals(captions.title()));
    LabelReader reader = new LabelReader(kind.context(), style);
    List<CurveLabel> labels = new CurveLabels(withLeaders(leaders), phrases, reader).find();
    return new Naming(traces, labels, plot.frame(), kind).named();
  }

  /** Words behind a sample name a curve and are no heading. */
  private boolean isInLegend(Phrase phrase) {
    double line = phrase.lineHeight();
    return plot.samples().stream()
        .map(Sample::box)
        .anyMatch(
            sample ->
                Math.abs(phrase.box().centreY() - sample.centreY()) < 0.6 * line
                    && phrase.box().x() - sample.right() > -0.5 * line
                    && phrase.box().x() - sample.right() < BEHIND_SAMPLE * line);
  }

  /** The dashes of a sample taken for writing. */
  private boolean isSample(Word word) {
    return word.recognised()
        && word.text().chars().noneMatch(Character::isLetterOrDigit)
        && plot.samples().stream()
            .anyMatch(
                sample ->
                    sample.box().sharedWidth(word.box()) > 0.3
                        && Math.abs(sample.box().centreY() - word.box().centreY())
                            < word.box().height());
  }

  private Plot withLeaders(List<Pointer> leaders) {
    List<Pointer> pointers = new ArrayList<>(plot.pointers());
    pointers.addAll(leaders);
    return plot.withPointers(pointers);
  }

  private ChartKind kind(Captions.Read captions, List<Trace> traces) {
    String x = null;
    if (axes.x() != null && !axes.x().titles().isEmpty()) {
      x = axes.x().titles().get(0).measure().quantity();
    }
    List<String> ys = new ArrayList<>();
    for (ReadAxis axis : axes.ys()) {
      axis.titles().forEach(title -> ys.add(title.measure().quantity()));
    }
    int falling = 0;
    for (Trace trace : traces) {
      falling += CurveGeometry.last(trace).y() > CurveGeometry.first(trace).y() ? 1 : -1;
    }
    StringBuilder said = new StringBuilder(captions.title() == null ? "" : captions.title());
    if (axes.x() != null && axes.x().title() != null) {
      said.append(' ').append(axes.x().title());
    }
    return ChartKind.of(x, ys, said.toString(), falling > 0);
  }

  private Finding noScale() {
    return new Finding(
        "chart/no-scale",
        Severity.WARNING,
        List.of(),
        place()
            + " was found, but "
            + String.join(" and ", axes.faults())
            + "; give two reference ticks per axis by hand to read its curves.",
        SOURCE);
  }

  private String place() {
    return "A chart on page "
        + plot.page()
        + " ("
        + Math.round(plot.frame().x())
        + " pt from the left, "
        + Math.round(plot.frame().y())
        + " pt from the top)";
  }

  private List<Finding> told(Lines lines, List<Trace> traces, List<Curve> curves) {
    List<String> ids = curves.stream().map(Curve::id).toList();
    List<Finding> findings = new ArrayList<>();
    for (String sentence : axes.outvoted()) {
      findings.add(
          new Finding(
              "chart/outvoted-tick",
              Severity.NOTE,
              ids,
              place() + ": " + sentence + "; it was left out.",
              SOURCE));
    }
    for (String sentence : lines.leftOut()) {
      findings.add(
          new Finding(
              "chart/left-out", Severity.NOTE, ids, place() + ": " + sentence + ".", SOURCE));
    }
    if (traces.isEmpty()) {
      findings.add(
          new Finding(
              "chart/no-curves",
              Severity.WARNING,
              List.of(),
              place() + " has axes, but no curve could be made out; place its points by hand.",
              SOURCE));
    }
    return findings;
  }
}
