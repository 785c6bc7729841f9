package commonsheet.chart.naming;

import commonsheet.chart.text.ChartText;
import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads labels whose degree sign was recognised as something else, where the others of the family
 * are temperatures: "+60d" beside "+25°C" and "0°C". Such a label is never plain.
 */
final class LostUnits {
  private static final Pattern NUMBER_AND_SIGNS =
      Pattern.compile("([+-]?[0-9]{1,2})\\s?[^0-9\\s.,]{1,2}");

  private static final int FEWEST_OTHERS = 2;

  private LostUnits() {}

  static List<CurveLabel> ofFamily(List<CurveLabel> labels, LabelReader reader) {
    long temperatures = labels.stream().filter(LostUnits::isTemperature).count();
    long saying = labels.stream().filter(label -> !label.meaning().isEmpty()).count();
    if (temperatures < FEWEST_OTHERS || temperatures < saying) {
      return labels;
    }
    List<CurveLabel> read = new ArrayList<>();
    for (CurveLabel label : labels) {
      Matcher lost = NUMBER_AND_SIGNS.matcher(ChartText.folded(label.text()));
      boolean unread = label.meaning().isEmpty() && label.phrase().recognised();
      read.add(
          unread && lost.matches()
              ? label.meaning(reader.read(lost.group(1) + "°C").unclear())
              : label);
    }
    return read;
  }

  private static boolean isTemperature(CurveLabel label) {
    return label.meaning().conditions().values().keySet().equals(Set.of(Conditions.TEMPERATURE));
  }
}
