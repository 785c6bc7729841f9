package commonsheet.check;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What cells of each form have, from forms.yaml. */
final class Forms {
  private static final JsonNode FILE = CheckData.read("forms.yaml");
  static final String DENSITY_SOURCE = FILE.get("densitySource").asText();
  static final String RANGE_SOURCE = FILE.get("rangeSource").asText();

  private Forms() {}

  /** Densities of a form, g/cm3; nothing where the form is not known. */
  static Optional<Interval> density(CellRecord record) {
    return form(record).map(form -> CheckData.interval(form.get("density")));
  }

  /** Usual values of a form, by quantity; empty where the form is not known. */
  static Map<String, Interval> ranges(CellRecord record) {
    Map<String, Interval> ranges = new TreeMap<>();
    form(record)
        .ifPresent(
            form ->
                form.get("ranges")
                    .properties()
                    .forEach(r -> ranges.put(r.getKey(), CheckData.interval(r.getValue()))));
    return ranges;
  }

  /** As the record says it, else as its dimensions tell it. */
  private static Optional<JsonNode> form(CellRecord record) {
    String form = record.cell().form();
    if (form == null) {
      boolean round = !Readings.of(record, "diameter").isEmpty();
      boolean flat =
          Readings.of(record, "thickness").stream()
              .anyMatch(s -> s.conditions().get(Conditions.CYCLES) == null);
      form = round && !flat ? "cylindrical" : flat && !round ? "pouch" : null;
    }
    return Optional.ofNullable(form).map(name -> FILE.get("forms").get(name));
  }
}
