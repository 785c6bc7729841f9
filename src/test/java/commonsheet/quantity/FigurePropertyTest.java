package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class FigurePropertyTest {
  @Property
  void readingWhatWasPrintedGivesTheSameFigure(@ForAll("figures") Figure figure) {
    String printed = FigurePrinter.print(figure);
    List<Figure> read = new FigureParser(NumberStyle.DECIMAL_POINT).find(printed);
    assertEquals(1, read.size(), () -> printed + " gave " + read);
    assertEquals(withText(figure, printed), read.get(0));
  }

  @Property
  void anyTextGivesFiguresInOrder(@ForAll String text) {
    assertInOrder(text);
  }

  /**
   * Texts made of what figures are made of reach further into the grammar than any Unicode does.
   */
  @Property(tries = 3000)
  void anyMixtureOfPartsGivesFiguresInOrder(@ForAll("mixtures") String text) {
    assertInOrder(text);
  }

  private static void assertInOrder(String text) {
    for (NumberStyle style : NumberStyle.values()) {
      int end = 0;
      for (Figure figure : new FigureParser(style).find(text)) {
        assertTrue(figure.start() >= end, text);
        assertTrue(figure.end() > figure.start(), text);
        assertEquals(text.substring(figure.start(), figure.end()), figure.text());
        end = figure.end();
      }
    }
    NumberStyle.of(text);
  }

  @Provide
  Arbitrary<String> mixtures() {
    return Arbitraries.of(
            "1", "20", "4.2", "2,550", "0.2", "05", "-", "−", "+", "±", "+/-", "/", "~", "～", " ",
            "\n", "to", "a", "≤", "<", ">=", "T", "(", ")", "（", "）", "C", "C5A", "It", "℃", "°",
            "º C", "mAh", "m", "Ω", "V", "A", "min", "Max.", "typ", "典型", "以上", "个月", "周", "三",
            "one", "between", "and", "x", "×", "%", "RH", "per", "cell", "th", "cycles", ".", ",",
            ":", "'", "K", "LP", "年", "月", "日", "\uD835", "\uDFCF")
        .list()
        .ofMaxSize(12)
        .map(parts -> String.join("", parts));
  }

  @Provide
  Arbitrary<Figure> figures() {
    return Combinators.combine(
            extents(),
            Arbitraries.of(Bound.values()),
            Arbitraries.of(Qualifier.values()).injectNull(0.4),
            Arbitraries.of(true, false),
            units())
        .as(FigurePropertyTest::figure);
  }

  /** Value, low and high, the absent ones null. */
  private Arbitrary<List<BigDecimal>> extents() {
    Arbitrary<BigDecimal> numbers =
        Arbitraries.bigDecimals()
            .between(BigDecimal.valueOf(-100_000), BigDecimal.valueOf(100_000))
            .ofScale(6);
    Arbitrary<BigDecimal> sizes =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, BigDecimal.valueOf(1000)).ofScale(4);
    Arbitrary<List<BigDecimal>> plain = numbers.map(value -> extent(value, null, null));
    Arbitrary<List<BigDecimal>> tolerances =
        Combinators.combine(numbers, sizes, sizes)
            .as((value, down, up) -> extent(value, value.subtract(down), value.add(up)));
    Arbitrary<List<BigDecimal>> ranges =
        Combinators.combine(numbers, sizes)
            .as((low, size) -> extent(null, low, low.add(size).add(BigDecimal.ONE)));
    return Arbitraries.oneOf(List.of(plain, tolerances, ranges));
  }

  private Arbitrary<TradeUnit> units() {
    List<TradeUnit> units = new ArrayList<>();
    UnitTable.standard().entries().forEach(entry -> units.add(entry.unit()));
    return Arbitraries.of(units).injectNull(0.1);
  }

  private static List<BigDecimal> extent(BigDecimal value, BigDecimal low, BigDecimal high) {
    List<BigDecimal> extent = new ArrayList<>();
    extent.add(value);
    extent.add(low);
    extent.add(high);
    return extent;
  }

  private static Figure figure(
      List<BigDecimal> extent,
      Bound bound,
      Qualifier qualifier,
      boolean approximate,
      TradeUnit unit) {
    boolean counts = unit != null && unit.dimension() == Dimension.CYCLES;
    return new Figure(
        0,
        0,
        "",
        number(extent.get(0), counts),
        number(extent.get(1), counts),
        number(extent.get(2), counts),
        boundWith(qualifier, bound),
        qualifier,
        approximate,
        unit,
        false);
  }

  /** Cycles are counted in whole numbers; what is printed otherwise is no count. */
  private static Double number(BigDecimal number, boolean whole) {
    if (number == null) {
      return null;
    }
    double value =
        whole
            ? number.setScale(0, java.math.RoundingMode.FLOOR).doubleValue()
            : number.doubleValue();
    return value + 0.0;
  }

  /** "Min." is a bound by itself, so a minimum that is no lower bound cannot be printed. */
  private static Bound boundWith(Qualifier qualifier, Bound bound) {
    if (qualifier == Qualifier.MINIMUM) {
      return Bound.AT_LEAST;
    }
    return qualifier == Qualifier.MAXIMUM ? Bound.AT_MOST : bound;
  }

  private static Figure withText(Figure figure, String printed) {
    return new Figure(
        0,
        printed.length(),
        printed,
        figure.value(),
        figure.low(),
        figure.high(),
        figure.bound(),
        figure.qualifier(),
        figure.approximate(),
        figure.unit(),
        false);
  }
}
