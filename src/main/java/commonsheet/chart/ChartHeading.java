package commonsheet.chart;

import commonsheet.chart.text.ChartText;
import commonsheet.chart.text.ChartWords;
import java.util.regex.Pattern;

/** Tells headings of charts from others, such as the title of the page over a drawing. */
final class ChartHeading {
  private static final Pattern NAMES =
      Pattern.compile(
          "\\bfig(ure)?\\b|\\babb\\b|\\bchart|\\bgraph|diagram|\\bcurves?\\b|characteristic|\\bprofile|"
              + "performance|kennlinie|verlauf|gr[áa]fic|curva|courbe|图|圖|図|曲线|曲線|特性|グラフ|カーブ");

  private ChartHeading() {}

  /** Whether it speaks of a chart, of what charts show, or of charging and discharging. */
  static boolean isOne(String heading) {
    String lower = ChartText.lower(heading);
    ChartWords words = ChartWords.standard();
    return NAMES.matcher(lower).find()
        || words.measures().isIn(lower)
        || words.contexts().isIn(lower)
        || words.kinds().isIn(lower);
  }
}
