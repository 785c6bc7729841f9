package commonsheet.chart.axis;

import commonsheet.chart.text.AxisMeasure;
import commonsheet.sheet.Box;
import java.util.List;

/**
 * An axis with its scale.
 *
 * @param fit in the printed unit
 * @param onTicks whether the numbers were tied to tick marks or grid lines; otherwise their own
 *     middles were used
 * @param box around the numbers
 * @param titles what the axis shows; none, one, or several that share it
 * @param title as printed, or null
 * @param titleDoubt why the unit or quantity is not certain, or null
 */
public record ReadAxis(
    Side side,
    ScaleFit.Fit fit,
    boolean onTicks,
    Box box,
    List<AxisMeasure> titles,
    String title,
    String titleDoubt) {
  public ReadAxis {
    titles = List.copyOf(titles);
  }

  public ReadAxis titled(List<AxisMeasure> newTitles, String printed, String doubt) {
    return new ReadAxis(side, fit, onTicks, box, newTitles, printed, doubt);
  }

  public Scale scale() {
    return fit.scale();
  }

  /** Whether enough numbers lie on one line for each to vouch for the others. */
  public boolean vouched() {
    int in = fit.in().size();
    return in >= 4 && in >= 3 * fit.out().size();
  }
}
