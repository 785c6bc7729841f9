package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityCatalogueTest {
  private final QuantityCatalogue catalogue = QuantityCatalogue.standard();

  @Test
  void everyQuantityIsComplete() {
    assertEquals(29, catalogue.all().size());
    for (QuantityKind kind : catalogue.all()) {
      assertTrue(kind.plausibleLow() < kind.plausibleHigh(), kind.name());
      assertFalse(kind.plausibleSource().isBlank(), kind.name());
      assertFalse(kind.description().isBlank(), kind.name());
      assertTrue(
          kind.emmo() == null
              || kind.emmo()
                  .matches(
                      "https://w3id\\.org/emmo[^ ]*_[0-9a-f]{8}(_[0-9a-f]{4}){3}_[0-9a-f]{12}"),
          kind.name());
      assertTrue(kind.qudt().startsWith("http://qudt.org/vocab/quantitykind/"), kind.qudt());
      assertEquals(kind.range(), kind.dimension() == Dimension.TEMPERATURE, kind.name());
    }
  }

  /** Published values of real cells, each from its maker's sheet: they must be plausible. */
  @ParameterizedTest
  @CsvSource({
    // NCR18650B leaflet, version 13.11 R1, 2012
    "capacity, 3.35",
    "nominalVoltage, 3.6",
    "mass, 48.5",
    "energyDensity, 676",
    "specificEnergy, 243",
    // GMB042030 specification
    "capacity, 0.17",
    "chargeCutoffCurrent, 0.0018",
    "internalResistanceAC, 300",
    "thickness, 4.2",
    // extremes by common practice, no source: a 10 mAh pouch and a 300 Ah prismatic cell
    "capacity, 0.01",
    "capacity, 300",
    "mass, 0.3",
    "mass, 5600",
    "internalResistanceAC, 0.15",
    "nominalVoltage, 2.4",
    "cycleLife, 12000",
    "maximumContinuousDischargeCurrent, 900",
  })
  void realCellsArePlausible(String name, double value) {
    QuantityKind kind = catalogue.get(name);
    assertTrue(value >= kind.plausibleLow() && value <= kind.plausibleHigh(), name);
  }

  @Test
  void knowsItsNames() {
    assertTrue(catalogue.has("maximumPulseDischargeCurrent"));
    assertFalse(catalogue.has("colour"));
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> catalogue.get("colour"));
    assertTrue(error.getMessage().contains("capacity, energy"), error.getMessage());
  }

  @Test
  void unitsAreTheCanonicalOnes() {
    assertEquals(
        Set.of("A.h", "W.h", "V", "A", "mOhm", "g", "mm", "Cel", "1", "%", "W.h/kg", "W.h/L"),
        catalogue.all().stream()
            .map(QuantityKind::unit)
            .collect(java.util.stream.Collectors.toSet()));
  }
}
