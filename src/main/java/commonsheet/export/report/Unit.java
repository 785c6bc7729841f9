package commonsheet.export.report;

import commonsheet.export.MeasureHead;
import java.util.Map;

/**
 * How a unit is written in files.
 *
 * @param suffix at the end of a column name
 * @param qudt its IRI in QUDT
 */
record Unit(String suffix, String qudt) {
  private static final String QUDT = "http://qudt.org/vocab/unit/";

  /** By UCUM code; QUDT names after the ucumCode of qudt-public-repo. */
  private static final Map<String, Unit> UNITS =
      Map.ofEntries(
          Map.entry("A", new Unit("A", QUDT + "A")),
          Map.entry("V", new Unit("V", QUDT + "V")),
          Map.entry("A.h", new Unit("Ah", QUDT + "A-HR")),
          Map.entry("W.h", new Unit("Wh", QUDT + "W-HR")),
          Map.entry("W.h/kg", new Unit("Wh_per_kg", QUDT + "W-HR-PER-KiloGM")),
          Map.entry("W", new Unit("W", QUDT + "W")),
          Map.entry("mOhm", new Unit("mOhm", QUDT + "MilliOHM")),
          Map.entry("g", new Unit("g", QUDT + "GM")),
          Map.entry("kg", new Unit("kg", QUDT + "KiloGM")),
          Map.entry("h", new Unit("h", QUDT + "HR")),
          Map.entry("km", new Unit("km", QUDT + "KiloM")),
          Map.entry("1", new Unit("share", null)));

  /** A UCUM code as people write it; nothing for a share. */
  static String shown(String ucum) {
    return ucum.equals("1") ? "" : MeasureHead.unit(ucum);
  }

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
