package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Dimensions against the size that the trade codes: 18650 is 18 mm by 65.0 mm, 4680 is 46 by 80 mm,
 * 603449 is 6.0 mm thick, 34 mm wide and 49 mm long.
 */
final class SizeCode extends NamedRule {
  private static final Pattern ROUND = Pattern.compile("(\\d\\d)(\\d\\d)\\d?");
  private static final Pattern FLAT = Pattern.compile("(\\d{2,3})(\\d\\d)(\\d{2,3})");

  /** Below and above the code, mm: real cells have sleeves, and codes leave out tenths. */
  private static final Interval ROUND_MARGIN = new Interval(-1.0, 1.2);

  /** Cells with a protection circuit or a raised terminal are up to 5 mm longer. */
  private static final Interval HEIGHT_MARGIN = new Interval(-1.5, 5.5);

  /** Pouch cells swell and have a seal, and a circuit at the end. */
  private static final Interval THICKNESS_MARGIN = new Interval(-0.8, 1.0);

  private static final Interval WIDTH_MARGIN = new Interval(-2, 2);
  private static final Interval LENGTH_MARGIN = new Interval(-2, 5);

  SizeCode() {
    super("size/code", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    Map<String, Interval> expected = expected(record.cell().sizeCode());
    return Readings.of(record)
        .filter(s -> expected.containsKey(s.quantity()) && s.conditions().isEmpty())
        .filter(s -> !fits(s, expected.get(s.quantity())))
        .map(
            s ->
                finding(
                    List.of(s.id()),
                    "A cell of size "
                        + record.cell().sizeCode()
                        + " has a "
                        + s.quantity()
                        + " of "
                        + Wording.withUnit(expected.get(s.quantity()).text(4), "mm")
                        + ", not "
                        + Wording.valueAndPage(s)
                        + "; look whether it is another dimension, or a pack's."));
  }

  private static boolean fits(Statement statement, Interval expected) {
    Span span = Span.of(statement);
    return expected.meets(new Interval(span.low(), span.high()));
  }

  private static Map<String, Interval> expected(String code) {
    Map<String, Interval> expected = new LinkedHashMap<>();
    Matcher round = ROUND.matcher(code == null ? "" : code);
    Matcher flat = FLAT.matcher(code == null ? "" : code);
    if (round.matches()) {
      expected.put("diameter", around(Double.parseDouble(round.group(1)), ROUND_MARGIN));
      expected.put("height", around(Double.parseDouble(round.group(2)), HEIGHT_MARGIN));
    } else if (flat.matches()) {
      double tenths = Double.parseDouble(flat.group(1));
      expected.put("thickness", around(tenths / 10, THICKNESS_MARGIN));
      expected.put("width", around(Double.parseDouble(flat.group(2)), WIDTH_MARGIN));
      expected.put("length", around(Double.parseDouble(flat.group(3)), LENGTH_MARGIN));
    }
    return expected;
  }

  private static Interval around(double middle, Interval margin) {
    return new Interval(middle + margin.low(), middle + margin.high());
  }
}
