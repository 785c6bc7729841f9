package commonsheet.export.sizing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.compare.VoltageTable;
import commonsheet.export.Caution;
import commonsheet.record.Cell;
import commonsheet.record.JsonText;
import commonsheet.record.Review;
import commonsheet.record.SchemaFile;
import commonsheet.record.Source;
import java.util.ArrayList;
import java.util.List;

/** A voltage table as JSON, after {@code schemas/voltage-table.schema.json}. */
final class VoltageTableJson {
  static final String SCHEMA = "commonsheet/voltage-table/1";
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private VoltageTableJson() {}

  /** Compiled when a table is first read. */
  private static final class Holder {
    static final SchemaFile FILES = SchemaFile.named("voltage-table");
  }

  static String text(CellVoltageTable cell) {
    VoltageTable table = cell.table();
    CellOrigin origin = cell.origin();
    ObjectNode file = JsonNodeFactory.instance.objectNode();
    file.put("schema", SCHEMA);
    file.put("caution", Caution.TEXT);
    file.set("cell", cellNode(origin));
    file.set("source", sourceNode(cell));
    ObjectNode review = file.putObject("review");
    put(review, "state", origin.review().state());
    put(review, "approvedBy", origin.review().approvedBy());
    put(review, "approvedAt", origin.review().approvedAt());
    ObjectNode units = file.putObject("units");
    units.put("current", "A").put("capacity", "A.h").put("voltage", "V").put("temperature", "Cel");
    file.put("cutoffVoltage", table.cutoffVoltage());
    file.set("temperature", JsonFields.node(table.temperature()));
    file.set("current", JsonFields.array(table.currents()));
    file.set("capacity", JsonFields.array(table.charges()));
    ArrayNode rows = file.putArray("voltage");
    table.voltages().forEach(row -> rows.add(JsonFields.array(row)));
    file.put("voltageUncertainty", table.uncertainty());
    ObjectNode valid = file.putObject("valid");
    valid.put("lowestCurrent", table.currents().get(0));
    valid.put("highestCurrent", table.currents().get(table.currents().size() - 1));
    valid.set("capacity", JsonFields.array(cell.capacities()));
    file.set("curves", JsonFields.array(table.from()));
    file.put("standing", VoltageTables.standing(table));
    return JsonText.of(file, JsonFields.DIGITS);
  }

  private static ObjectNode cellNode(CellOrigin origin) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    put(node, "id", origin.id());
    put(node, "maker", origin.cell().maker());
    put(node, "model", origin.cell().model());
    put(node, "designation", origin.cell().designation());
    put(node, "chemistry", origin.cell().chemistry());
    put(node, "form", origin.cell().form());
    put(node, "sizeCode", origin.cell().sizeCode());
    return node;
  }

  private static JsonNode sourceNode(CellVoltageTable cell) {
    Source source = cell.origin().source();
    if (source == null) {
      return JsonNodeFactory.instance.nullNode();
    }
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    put(node, "file", source.file());
    put(node, "sha256", source.sha256());
    put(node, "document", source.document());
    put(node, "revision", source.revision());
    put(node, "date", source.date());
    node.set("pages", JsonFields.array(cell.pages()));
    return node;
  }

  private static void put(ObjectNode node, String name, String text) {
    node.set(name, JsonFields.node(text));
  }

  /**
   * Reads a file.
   *
   * @param name what to call it in messages
   */
  static CellVoltageTable read(String text, String name) throws ExportException {
    JsonNode file;
    try {
      file = MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new ExportException(
          name
              + " is not readable as JSON ("
              + e.getOriginalMessage().lines().findFirst().orElse("no reason given")
              + "); export it again",
          e);
    }
    List<String> problems = Holder.FILES.problems(file, "the table");
    if (!problems.isEmpty()) {
      throw new ExportException(name + " is no voltage table: " + problems.get(0));
    }
    VoltageTable table =
        new VoltageTable(
            numbers(file.get("current")),
            numbers(file.get("capacity")),
            rows(file.get("voltage")),
            file.get("voltageUncertainty").asDouble(),
            file.get("cutoffVoltage").asDouble(),
            number(file.get("temperature")),
            texts(file.get("curves")),
            file.get("standing").asText().equals(VoltageTables.UNSURE));
    List<Integer> pages = new ArrayList<>();
    file.path("source").path("pages").forEach(page -> pages.add(page.asInt()));
    return VoltageTables.checked(new CellVoltageTable(origin(file), pages, table), name);
  }

  private static CellOrigin origin(JsonNode file) {
    JsonNode cell = file.get("cell");
    JsonNode source = file.get("source");
    JsonNode review = file.get("review");
    return new CellOrigin(
        cell.get("id").asText(),
        new Cell(
            text(cell, "maker"),
            text(cell, "model"),
            text(cell, "designation"),
            text(cell, "chemistry"),
            text(cell, "form"),
            text(cell, "sizeCode"),
            null),
        source.isNull()
            ? null
            : new Source(
                null,
                text(source, "document"),
                text(source, "revision"),
                text(source, "date"),
                text(source, "file"),
                text(source, "sha256"),
                null,
                null,
                null),
        new Review(
            text(review, "state"),
            null,
            null,
            text(review, "approvedBy"),
            text(review, "approvedAt"),
            null));
  }

  private static String text(JsonNode node, String name) {
    return node.path(name).textValue();
  }

  private static List<Double> numbers(JsonNode array) {
    List<Double> numbers = new ArrayList<>();
    array.forEach(node -> numbers.add(number(node)));
    return numbers;
  }

  private static Double number(JsonNode node) {
    return node.isNull() ? null : node.asDouble();
  }

  private static List<List<Double>> rows(JsonNode array) {
    List<List<Double>> rows = new ArrayList<>();
    array.forEach(row -> rows.add(numbers(row)));
    return rows;
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(node -> texts.add(node.asText()));
    return texts;
  }
}
