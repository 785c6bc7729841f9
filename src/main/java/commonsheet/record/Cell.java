package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which cell the record is about. Each member is null where the sheet does not say it.
 *
 * @param maker as printed
 * @param model the maker's name for the cell, as printed
 * @param designation in the form of IEC 61960-3, such as {@code INR19/66}
 * @param chemistry as printed, such as {@code Li-ion polymer}
 * @param form cylindrical, prismatic, pouch or coin
 * @param sizeCode such as {@code 18650}
 * @param evidence member name to the place where it stands
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Cell(
    String maker,
    String model,
    String designation,
    String chemistry,
    String form,
    String sizeCode,
    Map<String, Evidence> evidence) {
  public Cell {
    evidence = evidence == null ? Map.of() : Collections.unmodifiableMap(new TreeMap<>(evidence));
  }
}
