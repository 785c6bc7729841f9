package commonsheet.chart;

import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import java.util.List;

/**
 * Words that can name a curve.
 *
 * @param samples the samples of the legend beside them
 * @param pointers the lines that lead away from them
 */
record CurveLabel(
    Phrase phrase, LabelMeaning meaning, List<Sample> samples, List<Pointer> pointers) {
  CurveLabel {
    samples = List.copyOf(samples);
    pointers = List.copyOf(pointers);
  }

  String text() {
    return phrase.text();
  }

  CurveLabel meaning(LabelMeaning other) {
    return new CurveLabel(phrase, other, samples, pointers);
  }
}
