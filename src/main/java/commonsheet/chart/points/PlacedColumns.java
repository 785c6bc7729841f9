package commonsheet.chart.points;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.Heading;
import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which column of a file of points holds what; -1 for a column that is not there.
 *
 * @param curve names of the curves
 * @param kind what the chart shows
 * @param page of the sheet
 * @param left places across
 * @param top places down
 * @param onPage whether places are points of the page, not pixels of some picture
 * @param valueX values along the x axis
 * @param valueY values along the y axis
 * @param conditions columns of conditions by their name in records
 */
record PlacedColumns(
    int curve,
    int kind,
    int page,
    int left,
    int top,
    boolean onPage,
    int valueX,
    int valueY,
    Map<String, Integer> conditions) {
  private static final String POINTS = "pt";

  /** How many columns of points a line names; 0 where it names no two values. */
  static int suits(List<Heading> headings) {
    int values = values(headings).size();
    return values < 2 ? 0 : values + named(headings, "x") + named(headings, "y");
  }

  private static int named(List<Heading> headings, String name) {
    return place(headings, name) < 0 ? 0 : 1;
  }

  static PlacedColumns of(List<Heading> headings, ColumnFile file) throws ColumnException {
    List<Integer> values = values(headings);
    if (values.size() != 2) {
      throw file.wrong(
          values.isEmpty()
              ? "no line names the columns; name the values of both axes with their units, such as"
                  + " capacity / mAh,voltage / V"
              : "a chart has the values of two axes, and the columns name "
                  + values.size()
                  + ": "
                  + String.join(", ", values.stream().map(i -> headings.get(i).text()).toList()));
    }
    for (int value : values) {
      Heading heading = headings.get(value);
      if (heading.unit() == null) {
        throw file.wrong(
            "column \""
                + heading.text()
                + "\" does not say its unit; write it behind a slash, such as "
                + heading.meaning().quantity()
                + " / "
                + heading.meaning().unit());
      }
    }
    for (Heading heading : headings) {
      if (heading.meaning() == null && !heading.text().isEmpty() && !isKnown(heading.text())) {
        throw file.wrong(
            "column \""
                + heading.text()
                + "\" is none that points have; conditions are named as in records, such as"
                + " dischargeRate, and are in their units");
      }
    }
    int left = place(headings, "x");
    int top = place(headings, "y");
    if (left < 0 != top < 0) {
      throw file.wrong("places need both a column x and a column y");
    }
    return new PlacedColumns(
        find(headings, "curve"),
        find(headings, "kind"),
        find(headings, "page"),
        left,
        top,
        left >= 0 && headings.get(left).text().endsWith(POINTS),
        values.get(0),
        values.get(1),
        conditions(headings));
  }

  boolean hasPlaces() {
    return left >= 0;
  }

  private static List<Integer> values(List<Heading> headings) {
    List<Integer> values = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      Heading heading = headings.get(i);
      if (heading.meaning() != null && !isCondition(heading)) {
        values.add(i);
      }
    }
    return values;
  }

  private static boolean isKnown(String text) {
    return Conditions.NAMES.contains(text)
        || List.of("curve", "kind", "page").contains(text.toLowerCase(Locale.ROOT))
        || text.toLowerCase(Locale.ROOT).replace(" ", "").matches("[xy](/p[xt])?");
  }

  /** A bare name such as {@code temperature} is a condition, one with a unit an axis. */
  private static boolean isCondition(Heading heading) {
    return heading.unit() == null && Conditions.NAMES.contains(heading.text());
  }

  private static Map<String, Integer> conditions(List<Heading> headings) {
    Map<String, Integer> conditions = new LinkedHashMap<>();
    for (int i = 0; i < headings.size(); i++) {
      if (Conditions.NAMES.contains(headings.get(i).text())) {
        conditions.put(headings.get(i).text(), i);
      }
    }
    return conditions;
  }

  private static int find(List<Heading> headings, String name) {
    for (int i = 0; i < headings.size(); i++) {
      if (headings.get(i).text().equalsIgnoreCase(name)) {
        return i;
      }
    }
    return -1;
  }

  /** Places are headed {@code x}, {@code x / pt} or {@code x / px}. */
  private static int place(List<Heading> headings, String name) {
    for (int i = 0; i < headings.size(); i++) {
      String text = headings.get(i).text().toLowerCase(Locale.ROOT).replace(" ", "");
      if (text.equals(name) || text.equals(name + "/px") || text.equals(name + "/" + POINTS)) {
        return i;
      }
    }
    return -1;
  }
}
