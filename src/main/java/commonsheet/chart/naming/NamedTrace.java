package commonsheet.chart.naming;

import commonsheet.chart.plot.Trace;
import java.util.List;

/**
 * A curve with its label.
 *
 * @param label null where none could be tied to it
 * @param doubts why label and curve may not belong together, one sentence each
 */
public record NamedTrace(Trace trace, CurveLabel label, List<String> doubts) {
  public NamedTrace {
    doubts = List.copyOf(doubts);
  }
}
