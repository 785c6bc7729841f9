package commonsheet.cli;

import commonsheet.compare.GivenLoad;
import commonsheet.compare.Measure;
import commonsheet.quantity.GivenQuantity;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What options of a comparison are given as; each says what is wrong and what would be right. */
final class Given {
  private Given() {}

  /** In A, above 0. */
  static final class Current implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      return within(
          text, "A", Double.MIN_VALUE, GivenLoad.HIGHEST, "give a current such as 10A or 9500mA");
    }
  }

  /** In V. */
  static final class Voltage implements ITypeConverter<Double> {
    /** Titanate cells end at 1.5 V, and no lithium-ion cell is charged above 5 V. */
    private static final double HIGHEST = 5;

    @Override
    public Double convert(String text) {
      return within(
          text, "V", 0.5, HIGHEST, "give the voltage of one cell, from 0.5 to 5 V, such as 3.0V");
    }
  }

  /** In °C. */
  static final class Temperature implements ITypeConverter<Double> {
    private static final double LOWEST = -60;
    private static final double HIGHEST = 100;

    @Override
    public Double convert(String text) {
      return within(
          text,
          "Cel",
          LOWEST,
          HIGHEST,
          "give a temperature from -60 to 100 °C, such as 23 or 73°F");
    }
  }

  /** In A.h, above 0. */
  static final class Charge implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      return within(
          text, "A.h", Double.MIN_VALUE, GivenLoad.HIGHEST, "give a charge such as 8.2Ah");
    }
  }

  /** From 0 up to below 1. */
  static final class Share implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      double share;
      try {
        share = GivenLoad.share(text);
      } catch (IllegalArgumentException wrong) {
        throw new TypeConversionException(
            wrong.getMessage().contains("write one")
                ? wrong.getMessage() + "."
                : wrong.getMessage() + "; write a share such as 20% or 0.2.");
      }
      if (share == 1) {
        throw new TypeConversionException("all of it leaves nothing to compare; give less.");
      }
      return share;
    }
  }

  /** In km/h, above 0. */
  static final class Speed implements ITypeConverter<Double> {
    private static final Pattern FORM = Pattern.compile("(.*?)\\s*(km/h|m/s|kn|knots?|mph)?");
    private static final Map<String, Double> UNITS =
        Map.of(
            "km/h", 1.0, "m/s", 3.6, "kn", 1.852, "knot", 1.852, "knots", 1.852, "mph", 1.609344);
    private static final double HIGHEST = 1000;

    @Override
    public Double convert(String text) {
      Matcher parts = FORM.matcher(text.strip());
      String unit = parts.matches() && parts.group(2) != null ? parts.group(2) : "km/h";
      String number = parts.matches() ? parts.group(1) : text;
      String advice = "give a speed such as 8km/h, 2.2m/s or 4.3kn";
      return UNITS.get(unit)
          * within(number, "1", Double.MIN_VALUE, HIGHEST / UNITS.get(unit), advice);
    }
  }

  /** The name of a licence, or its address: what a data package can hold. */
  static final class Licence implements ITypeConverter<String> {
    private static final Pattern NAME = Pattern.compile("[-a-zA-Z0-9._]+");
    private static final Pattern ADDRESS = Pattern.compile("https?://[^\\s\"<>]+");

    @Override
    public String convert(String text) {
      if (NAME.matcher(text).matches() || ADDRESS.matcher(text).matches()) {
        return text;
      }
      throw new TypeConversionException(
          "\""
              + text
              + "\" is no licence's name; give one such as CC-BY-4.0, or its https address.");
    }
  }

  /** A measure by its label, in any case. */
  static final class ByLabel implements ITypeConverter<Measure> {
    @Override
    public Measure convert(String text) {
      return Arrays.stream(Measure.values())
          .filter(measure -> measure.label().equalsIgnoreCase(text.strip()))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "\"" + text + "\" is no quantity of a comparison; they are " + labels()));
    }

    static String labels() {
      return String.join(", ", Arrays.stream(Measure.values()).map(Measure::label).toList());
    }
  }

  private static double within(String text, String unit, double low, double high, String advice) {
    double number;
    try {
      number = GivenQuantity.parse(text, unit);
    } catch (IllegalArgumentException wrong) {
      throw new TypeConversionException(wrong.getMessage() + "; " + advice + ".");
    }
    if (!(number >= low && number <= high)) {
      throw new TypeConversionException("\"" + text + "\" cannot be; " + advice + ".");
    }
    return number;
  }
}
