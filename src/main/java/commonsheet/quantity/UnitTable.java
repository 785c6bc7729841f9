package commonsheet.quantity;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The units of units.yaml, their sizes and spellings. The sizes stand in a table because asking the
 * UCUM library costs more than a second in a cold process; a test holds each of them against the
 * library.
 */
final class UnitTable {
  /**
   * A unit's line in the table. A number x of it is (x + shift) · numerator / denominator of the
   * dimension's base.
   *
   * @param usualLow with usualHigh the numbers a datasheet prints in this unit; NaN where nothing
   *     is said
   */
  record Entry(
      TradeUnit unit,
      BigDecimal numerator,
      BigDecimal denominator,
      BigDecimal shift,
      double usualLow,
      double usualHigh,
      String print) {
    boolean isUsual(BigDecimal number) {
      double size = Math.abs(number.doubleValue());
      return !(size < usualLow) && !(size > usualHigh);
    }

    private BigDecimal toBase(BigDecimal number) {
      return number.add(shift).multiply(numerator).divide(denominator, MathContext.DECIMAL128);
    }

    private BigDecimal fromBase(BigDecimal number) {
      return number.multiply(denominator).divide(numerator, MathContext.DECIMAL128).subtract(shift);
    }
  }

  /** One way to print a unit. */
  record Spelling(Entry entry, boolean closed, boolean doubtful) {
    TradeUnit unit() {
      return entry.unit();
    }
  }

  private static final class Standard {
    private static final UnitTable TABLE = new UnitTable(Resource.read("units.yaml"));
  }

  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final Phrases<Spelling> spellings = new Phrases<>();

  private UnitTable(JsonNode file) {
    addSpellings(file.path("none"), null);
    for (JsonNode node : file.path("units")) {
      Entry entry = entry(node);
      entries.put(entry.unit().ucum(), entry);
      addSpellings(node.path("spellings"), new Spelling(entry, false, false));
      addSpellings(node.path("closed"), new Spelling(entry, true, false));
      addSpellings(node.path("doubtful"), new Spelling(entry, false, true));
    }
  }

  static UnitTable standard() {
    return Standard.TABLE;
  }

  /** The spellings of all units; words that only begin like a unit mean null. */
  Phrases<Spelling> spellings() {
    return spellings;
  }

  Collection<Entry> entries() {
    return Collections.unmodifiableCollection(entries.values());
  }

  /**
   * The unit of a UCUM code.
   *
   * @throws IllegalArgumentException if the table does not have it
   */
  TradeUnit unit(String ucum) {
    return entry(ucum).unit();
  }

  /**
   * The line of a UCUM code; units put together from two others have none of their own and stay as
   * they are.
   */
  Entry entry(String ucum) {
    Entry entry = entries.get(ucum);
    if (entry == null) {
      throw new IllegalArgumentException(
          "no unit with the UCUM code \"" + ucum + "\" is known here");
    }
    return entry;
  }

  BigDecimal convert(BigDecimal number, String from, String to) {
    if (from.equals(to)) {
      return number;
    }
    Entry source = entry(from);
    Entry target = entry(to);
    requireSameDimension(source, target);
    return target.fromBase(source.toBase(number)).round(MathContext.DECIMAL64);
  }

  /** A difference of two numbers converted: 9 °F are 5 °C. */
  BigDecimal convertDifference(BigDecimal difference, String from, String to) {
    BigDecimal zero = convert(BigDecimal.ZERO, from, to);
    return convert(difference, from, to).subtract(zero).round(new MathContext(14));
  }

  private static void requireSameDimension(Entry source, Entry target) {
    Dimension dimension = source.unit().dimension();
    if (dimension != target.unit().dimension() || dimension == Dimension.OTHER) {
      throw new IllegalArgumentException(
          source.unit().ucum() + " cannot be converted to " + target.unit().ucum());
    }
  }

  private static Entry entry(JsonNode node) {
    String[] factor = node.path("factor").asText("1").split("/");
    JsonNode usual = node.path("usual");
    return new Entry(
        new TradeUnit(
            node.path("ucum").asText(), Dimension.valueOf(node.path("dimension").asText())),
        new BigDecimal(factor[0]),
        factor.length > 1 ? new BigDecimal(factor[1]) : BigDecimal.ONE,
        new BigDecimal(node.path("shift").asText("0")),
        usual.path(0).asDouble(Double.NaN),
        usual.path(1).asDouble(Double.NaN),
        node.path("print").asText());
  }

  private void addSpellings(JsonNode list, Spelling meaning) {
    for (String spelling : Resource.strings(list)) {
      spellings.add(spelling, meaning);
    }
  }
}
