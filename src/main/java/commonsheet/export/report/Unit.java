package commonsheet.export.report;

import java.util.Map;

/**
 * How a unit is written.
 *
 * @param shown for people
 * @param suffix at the end of a column name
 * @param qudt its IRI in QUDT
 */
record Unit(String shown, String suffix, String qudt) {
  private static final String QUDT = "http://qudt.org/vocab/unit/";

  /** By UCUM code; QUDT names after the ucumCode of qudt-public-repo. */
  private static final Map<String, Unit> UNITS =
      Map.ofEntries(
          Map.entry("A", new Unit("A", "A", QUDT + "A")),
          Map.entry("V", new Unit("V", "V", QUDT + "V")),
          Map.entry("A.h", new Unit("Ah", "Ah", QUDT + "A-HR")),
          Map.entry("W.h", new Unit("Wh", "Wh", QUDT + "W-HR")),
          Map.entry("W.h/kg", new Unit("Wh/kg", "Wh_per_kg", QUDT + "W-HR-PER-KiloGM")),
          Map.entry("W", new Unit("W", "W", QUDT + "W")),
          Map.entry("mOhm", new Unit("mΩ", "mOhm", QUDT + "MilliOHM")),
          Map.entry("g", new Unit("g", "g", QUDT + "GM")),
          Map.entry("kg", new Unit("kg", "kg", QUDT + "KiloGM")),
          Map.entry("h", new Unit("h", "h", QUDT + "HR")),
          Map.entry("km", new Unit("km", "km", QUDT + "KiloM")),
          Map.entry("1", new Unit("", "share", null)));

  /**
   * The unit of a UCUM code.
   *
   * @throws IllegalArgumentException for one that no figure is in
   */
  static Unit of(String ucum) {
    Unit unit = UNITS.get(ucum);
    if (unit == null) {
      throw new IllegalArgumentException("no figure is in \"" + ucum + "\"");
    }
    return unit;
  }
}
