package commonsheet.quantity;

/**
 * A quantity a cell record can state.
 *
 * @param name its name in records, such as {@code capacity}
 * @param label what people are shown, such as {@code Discharge cut-off voltage}
 * @param unit UCUM code of its canonical unit
 * @param dimension what the unit measures
 * @param range whether it is stated as a range from low to high (temperatures)
 * @param plausibleLow least number in the canonical unit that a lithium-ion cell from a 10 mAh
 *     pouch to a 300 Ah prismatic cell can have
 * @param plausibleHigh greatest such number
 * @param plausibleSource where the two come from
 * @param emmo IRI of the EMMO term, or of the nearest wider one; null where there is none
 * @param qudt IRI of the QUDT quantity kind
 * @param description what it is, in one sentence
 */
public record QuantityKind(
    String name,
    String label,
    String unit,
    Dimension dimension,
    boolean range,
    double plausibleLow,
    double plausibleHigh,
    String plausibleSource,
    String emmo,
    String qudt,
    String description) {}
