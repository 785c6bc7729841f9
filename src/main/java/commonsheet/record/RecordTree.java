package commonsheet.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Makes records of trees that are valid by their schema, as {@link ObjectMapper#treeToValue} does
 * but several times faster: statements and curves, which are most of a record, member by member,
 * the rest, and whatever has a member that is not known here, by the mapper.
 */
final class RecordTree {
  private static final Set<String> STATEMENT =
      Set.of(
          "id",
          "quantity",
          "statistic",
          "value",
          "low",
          "high",
          "unit",
          "conditions",
          "evidence",
          "standing",
          "doubts",
          "original");
  private static final Set<String> CURVE =
      Set.of(
          "id",
          "kind",
          "label",
          "conditions",
          "x",
          "y",
          "points",
          "uncertainty",
          "method",
          "evidence",
          "standing",
          "doubts",
          "original");
  private static final Set<String> AXIS = Set.of("quantity", "unit", "ticks");
  private static final Set<String> TICK = Set.of("at", "value", "text");
  private static final Set<String> EVIDENCE =
      Set.of(
          "page",
          "box",
          "text",
          "method",
          "rule",
          "words",
          "confidence",
          "note",
          "from",
          "file",
          "sha256");

  private final ObjectMapper mapper;
  private final Map<String, Method> methods;
  private final Map<String, Standing> standings;
  private final Map<String, Statistic> statistics;
  private final Map<String, WordSource> words;

  /** Makes one member of a list. */
  private interface Maker<T> {
    T of(JsonNode node) throws JsonProcessingException;
  }

  RecordTree(ObjectMapper mapper) {
    this.mapper = mapper;
    this.methods = named(Method.values());
    this.standings = named(Standing.values());
    this.statistics = named(Statistic.values());
    this.words = named(WordSource.values());
  }

  private <T> Map<String, T> named(T[] constants) {
    return Arrays.stream(constants)
        .collect(
            Collectors.toMap(
                constant -> mapper.<JsonNode>valueToTree(constant).textValue(),
                Function.identity()));
  }

  /**
   * The record of a tree.
   *
   * @throws JsonProcessingException for a value that is valid and yet does not fit its type
   */
  CellRecord record(JsonNode tree) throws JsonProcessingException {
    return new CellRecord(
        text(tree, "schema"),
        text(tree, "id"),
        mapped(tree.get("cell"), Cell.class),
        mapped(tree.get("source"), Source.class),
        list(
            tree.get("statements"),
            node -> made(node, STATEMENT, Statement.class, this::statement)),
        list(tree.get("curves"), node -> made(node, CURVE, Curve.class, this::curve)),
        list(tree.get("findings"), node -> mapped(node, Finding.class)),
        mapped(tree.get("review"), Review.class));
  }

  private Statement statement(JsonNode node) throws JsonProcessingException {
    return new Statement(
        text(node, "id"),
        text(node, "quantity"),
        statistics.get(text(node, "statistic")),
        number(node, "value"),
        number(node, "low"),
        number(node, "high"),
        text(node, "unit"),
        conditions(node.get("conditions")),
        made(node.get("evidence"), EVIDENCE, Evidence.class, this::evidence),
        standings.get(text(node, "standing")),
        list(node.get("doubts"), JsonNode::textValue),
        mapped(node.get("original"), Original.class));
  }

  private Curve curve(JsonNode node) throws JsonProcessingException {
    JsonNode uncertainty = node.get("uncertainty");
    return new Curve(
        text(node, "id"),
        text(node, "kind"),
        text(node, "label"),
        conditions(node.get("conditions")),
        made(node.get("x"), AXIS, Curve.Axis.class, this::axis),
        made(node.get("y"), AXIS, Curve.Axis.class, this::axis),
        points(node.get("points")),
        new Curve.Uncertainty(number(uncertainty, "x"), number(uncertainty, "y")),
        methods.get(text(node, "method")),
        made(node.get("evidence"), EVIDENCE, Evidence.class, this::evidence),
        standings.get(text(node, "standing")),
        list(node.get("doubts"), JsonNode::textValue),
        mapped(node.get("original"), Curve.Original.class));
  }

  private Curve.Axis axis(JsonNode node) throws JsonProcessingException {
    return new Curve.Axis(
        text(node, "quantity"),
        text(node, "unit"),
        list(node.get("ticks"), tick -> made(tick, TICK, Curve.Tick.class, RecordTree::tick)));
  }

  private static Curve.Tick tick(JsonNode node) {
    return new Curve.Tick(number(node, "at"), number(node, "value"), text(node, "text"));
  }

  private static Points points(JsonNode list) {
    double[] numbers = new double[2 * list.size()];
    for (int i = 0; i < list.size(); i++) {
      JsonNode point = list.get(i);
      numbers[2 * i] = point.get(0).doubleValue();
      numbers[2 * i + 1] = point.get(1).doubleValue();
    }
    return Points.of(numbers);
  }

  private Evidence evidence(JsonNode node) throws JsonProcessingException {
    return new Evidence(
        page(node.get("page")),
        list(node.get("box"), JsonNode::doubleValue),
        text(node, "text"),
        methods.get(text(node, "method")),
        text(node, "rule"),
        words.get(text(node, "words")),
        number(node, "confidence"),
        text(node, "note"),
        list(node.get("from"), JsonNode::textValue),
        text(node, "file"),
        text(node, "sha256"));
  }

  private Integer page(JsonNode node) throws JsonProcessingException {
    return node != null && node.isInt()
        ? Integer.valueOf(node.intValue())
        : mapped(node, Integer.class);
  }

  private static Conditions conditions(JsonNode node) {
    if (node.isEmpty()) {
      return Conditions.NONE;
    }
    Map<String, Double> values = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      values.put(member.getKey(), member.getValue().doubleValue());
    }
    return new Conditions(values);
  }

  /** By the maker where it knows every member, else by the mapper. */
  private <T> T made(JsonNode node, Set<String> members, Class<T> type, Maker<T> maker)
      throws JsonProcessingException {
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      if (!members.contains(member.getKey())) {
        return mapper.treeToValue(node, type);
      }
    }
    return maker.of(node);
  }

  private <T> T mapped(JsonNode node, Class<T> type) throws JsonProcessingException {
    return node == null ? null : mapper.treeToValue(node, type);
  }

  private static String text(JsonNode node, String member) {
    JsonNode text = node.get(member);
    return text == null ? null : text.textValue();
  }

  private static Double number(JsonNode node, String member) {
    JsonNode number = node.get(member);
    return number == null ? null : Double.valueOf(number.doubleValue());
  }

  private static <T> List<T> list(JsonNode nodes, Maker<T> maker) throws JsonProcessingException {
    if (nodes == null) {
      return List.of();
    }
    List<T> made = new ArrayList<>(nodes.size());
    for (JsonNode node : nodes) {
      made.add(maker.of(node));
    }
    return made;
  }
}
