package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a schema cannot say about a record: numbers that a computer can hold, ranges the right way
 * round, ids used once, ids that exist, pages that exist. Expects a record that its schema accepts.
 */
final class RecordConsistency {
  private final JsonNode record;
  private final Set<String> ids = new HashSet<>();
  private final List<String> problems = new ArrayList<>();

  private RecordConsistency(JsonNode record) {
    this.record = record;
  }

  static List<String> problems(JsonNode record) {
    RecordConsistency check = new RecordConsistency(record);
    if (!allFinite(record)) {
      check.finite(record, "");
    }
    check.collectIds();
    check.statements();
    check.cell();
    check.curves();
    check.findings();
    return check.problems;
  }

  /** Nearly always so, and told without naming every place. */
  private static boolean allFinite(JsonNode node) {
    if (node.isNumber()) {
      return Double.isFinite(node.doubleValue());
    }
    for (JsonNode member : node) {
      if (!allFinite(member)) {
        return false;
      }
    }
    return true;
  }

  private void finite(JsonNode node, String pointer) {
    if (node.isNumber() && !Double.isFinite(node.doubleValue())) {
      problems.add(pointer + ": the number is too large to be held");
    }
    int index = 0;
    for (JsonNode element : node.isArray() ? node : List.<JsonNode>of()) {
      finite(element, pointer + "/" + index++);
    }
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      finite(member.getValue(), pointer + "/" + member.getKey());
    }
  }

  private void collectIds() {
    for (String list : List.of("statements", "curves")) {
      JsonNode members = record.get(list);
      for (int i = 0; i < members.size(); i++) {
        String id = members.get(i).get("id").textValue();
        if (!ids.add(id)) {
          problems.add(
              pointer(list, i) + "/id: \"" + id + "\" is used before; give each an id of its own");
        }
      }
    }
  }

  private void statements() {
    JsonNode statements = record.get("statements");
    for (int i = 0; i < statements.size(); i++) {
      JsonNode statement = statements.get(i);
      String pointer = pointer("statements", i);
      range(statement, "low", "high", pointer);
      range(
          statement.get("conditions"),
          "temperatureLow",
          "temperatureHigh",
          pointer + "/conditions");
      evidence(statement.get("evidence"), pointer + "/evidence");
      for (JsonNode origin : statement.get("evidence").path("from")) {
        if (origin.equals(statement.get("id"))) {
          problems.add(pointer + "/evidence/from: a statement cannot come from itself");
        }
        if (origin.textValue().startsWith("c") && !isDerived(statement)) {
          problems.add(
              pointer
                  + "/evidence/from: only a derived value comes from curves, such as "
                  + origin);
        }
      }
    }
  }

  private static boolean isDerived(JsonNode statement) {
    return statement.get("evidence").path("method").asText().equals("derived");
  }

  private void cell() {
    for (Map.Entry<String, JsonNode> member : record.get("cell").path("evidence").properties()) {
      String pointer = "/cell/evidence/" + member.getKey();
      if (!record.get("cell").has(member.getKey())) {
        problems.add(pointer + ": evidence for a member that the cell does not have");
      }
      evidence(member.getValue(), pointer);
    }
  }

  private void curves() {
    JsonNode curves = record.get("curves");
    for (int i = 0; i < curves.size(); i++) {
      String pointer = pointer("curves", i);
      range(
          curves.get(i).get("conditions"),
          "temperatureLow",
          "temperatureHigh",
          pointer + "/conditions");
      evidence(curves.get(i).get("evidence"), pointer + "/evidence");
    }
  }

  private void findings() {
    JsonNode findings = record.get("findings");
    for (int i = 0; i < findings.size(); i++) {
      exist(findings.get(i).get("about"), pointer("findings", i) + "/about");
    }
  }

  private void range(JsonNode node, String low, String high, String pointer) {
    if (node.has(low) && node.has(high) && node.get(low).asDouble() > node.get(high).asDouble()) {
      problems.add(
          pointer
              + ": \""
              + low
              + "\" "
              + node.get(low)
              + " is above \""
              + high
              + "\" "
              + node.get(high)
              + "; exchange them");
    }
  }

  private void evidence(JsonNode evidence, String pointer) {
    JsonNode pages = record.get("source").path("pages");
    if (evidence.has("page") && pages.isMissingNode()) {
      problems.add(pointer + "/page: the record has no sheet, so nothing stands on a page of it");
    } else if (evidence.path("page").asInt() > pages.asInt()) {
      problems.add(pointer + "/page: the sheet has only " + pages.asInt() + " pages");
    }
    boolean typed = evidence.path("method").asText().equals("typed-in");
    if (typed && !evidence.has("page") && !pages.isMissingNode()) {
      problems.add(pointer + ": \"page\" is missing; a value of a sheet has its place on it");
    }
    exist(evidence.path("from"), pointer + "/from");
  }

  private void exist(JsonNode named, String pointer) {
    for (JsonNode id : named) {
      if (!ids.contains(id.textValue())) {
        problems.add(pointer + ": the record has no " + id);
      }
    }
  }

  private static String pointer(String list, int index) {
    return "/" + list + "/" + index;
  }
}
