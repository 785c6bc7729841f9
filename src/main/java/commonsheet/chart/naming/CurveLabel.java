package commonsheet.chart.naming;

import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.text.Phrase;
import java.util.List;

/**
 * Words that can name a curve.
 *
 * @param samples the samples of the legend beside them
 * @param pointers the lines that lead away from them
 */
public record CurveLabel(
    Phrase phrase, LabelMeaning meaning, List<Sample> samples, List<Pointer> pointers) {
  public CurveLabel {
    samples = List.copyOf(samples);
    pointers = List.copyOf(pointers);
  }

  public String text() {
    return phrase.text();
  }

  public CurveLabel meaning(LabelMeaning other) {
    return new CurveLabel(phrase, other, samples, pointers);
  }
}
