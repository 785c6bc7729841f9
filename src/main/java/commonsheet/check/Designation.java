package commonsheet.check;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A designation by IEC 61960-3, such as {@code INR19/66} or {@code ICP9/35/150}: I for lithium-ion,
 * a letter for the positive electrode, R for round or P for prismatic, then the greatest diameter
 * or thickness, the greatest width of prismatic ones, and the greatest height, each rounded up to
 * whole millimetres, or in tenths with a t where it is below one.
 *
 * @param letter of the positive electrode
 * @param round whether the cell is cylindrical
 * @param first diameter or thickness, mm
 * @param width mm, or null for round cells
 * @param height mm
 */
record Designation(char letter, boolean round, double first, Double width, double height) {
  private static final Pattern FORM =
      Pattern.compile("\\d?I([A-Z])([RP])(t?\\d+)/(?:(t?\\d+)/)?(t?\\d+)(?:-\\d+)?");

  /** The parts of a designation; nothing where it has another form. */
  static Optional<Designation> of(String printed) {
    Matcher form = FORM.matcher(printed == null ? "" : printed.replaceAll("\\s", ""));
    if (!form.matches() || (form.group(2).equals("P") != (form.group(4) != null))) {
      return Optional.empty();
    }
    return Optional.of(
        new Designation(
            form.group(1).charAt(0),
            form.group(2).equals("R"),
            millimetres(form.group(3)),
            form.group(4) == null ? null : millimetres(form.group(4)),
            millimetres(form.group(5))));
  }

  private static double millimetres(String number) {
    return number.startsWith("t")
        ? Double.parseDouble(number.substring(1)) / 10
        : Double.parseDouble(number);
  }

  /**
   * Whether the letter can stand for a chemistry; one that the standard does not know stands for
   * any.
   */
  boolean letterFits(Chemistry chemistry) {
    return "CNMVTF".indexOf(letter) < 0 || letter == 'V' || letter == chemistry.letter();
  }
}
