package commonsheet.layout;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** The content of a YAML text together with the line on which each part of it stands. */
final class RuleLines {
  /** Far above what a rule needs; keeps a file that refers to itself from growing without end. */
  private static final int MOST_PARTS = 20_000;

  private static final int DEEPEST = 30;
  private static final int LONGEST = 1_000_000;
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(\\.\\d*)?([eE][-+]?\\d{1,3})?");

  private final Map<String, Integer> lines = new HashMap<>();
  private final List<RuleProblem> problems = new ArrayList<>();
  private JsonNode content = JsonNodeFactory.instance.missingNode();
  private int parts;

  private RuleLines() {}

  /** Reads a text; one that is no YAML has problems and no content. */
  static RuleLines of(String text) {
    RuleLines result = new RuleLines();
    LoaderOptions options = new LoaderOptions();
    options.setNestingDepthLimit(DEEPEST);
    options.setCodePointLimit(LONGEST);
    try {
      Node root = new Yaml(options).compose(new StringReader(text));
      if (root != null) {
        result.content = result.read(root, "", 0);
      } else {
        result.problems.add(new RuleProblem(1, "the file is empty; write a layout rule into it"));
      }
    } catch (MarkedYAMLException wrong) {
      int line = wrong.getProblemMark() == null ? 1 : wrong.getProblemMark().getLine() + 1;
      result.problems.add(
          new RuleProblem(
              line,
              "this is no YAML ("
                  + wrong.getProblem()
                  + "); check indentation, colons and quotes here and just above"));
    } catch (YAMLException wrong) {
      result.problems.add(
          new RuleProblem(1, "this is no YAML (" + firstLine(wrong) + "); write it anew as text"));
    }
    return result;
  }

  /** What the text says, in the terms of JSON; missing where it is no YAML. */
  JsonNode content() {
    return content;
  }

  /** What is wrong with the text as such: its syntax, members named twice. */
  List<RuleProblem> problems() {
    return List.copyOf(problems);
  }

  /** The line, from 1, of what a JSON pointer points to, or of the nearest part around it. */
  int line(String pointer) {
    String around = pointer;
    while (!lines.containsKey(around) && !around.isEmpty()) {
      around = around.substring(0, Math.max(0, around.lastIndexOf('/')));
    }
    return lines.getOrDefault(around, 1);
  }

  /** The pointer to a member of what another pointer points to. */
  static String member(String pointer, String name) {
    return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  private JsonNode read(Node node, String pointer, int depth) {
    lines.putIfAbsent(pointer, lineOf(node));
    if (++parts > MOST_PARTS || depth > DEEPEST) {
      throw new YAMLException("it is too large or refers to itself");
    }
    if (node instanceof MappingNode mapping) {
      ObjectNode object = JsonNodeFactory.instance.objectNode();
      for (NodeTuple tuple : mapping.getValue()) {
        readMember(tuple, object, pointer, depth);
      }
      return object;
    }
    if (node instanceof SequenceNode sequence) {
      ArrayNode array = JsonNodeFactory.instance.arrayNode();
      for (Node item : sequence.getValue()) {
        array.add(read(item, pointer + "/" + array.size(), depth + 1));
      }
      return array;
    }
    return scalar((ScalarNode) node);
  }

  private void readMember(NodeTuple tuple, ObjectNode object, String pointer, int depth) {
    String name =
        tuple.getKeyNode() instanceof ScalarNode key ? key.getValue() : "(a member without a name)";
    String place = member(pointer, name);
    if (object.has(name)) {
      problems.add(
          new RuleProblem(
              lineOf(tuple.getKeyNode()),
              "\""
                  + name
                  + "\" is named a second time, first on line "
                  + lines.get(place)
                  + "; put both together"));
      return;
    }
    lines.put(place, lineOf(tuple.getKeyNode()));
    object.set(name, read(tuple.getValueNode(), place, depth + 1));
  }

  /** Only what looks like a number in JSON is one: 1:30 or 0o17 are texts, as their author sees. */
  private static JsonNode scalar(ScalarNode node) {
    JsonNodeFactory json = JsonNodeFactory.instance;
    String text = node.getValue();
    if (!node.isPlain()) {
      return json.textNode(text);
    }
    if (node.getTag().equals(Tag.NULL)) {
      return json.nullNode();
    }
    if (text.equals("true") || text.equals("false")) {
      return json.booleanNode(text.equals("true"));
    }
    if (NUMBER.matcher(text).matches()) {
      BigDecimal number = new BigDecimal(text);
      return number.scale() <= 0 && number.precision() < 10
          ? json.numberNode(number.intValue())
          : json.numberNode(number);
    }
    return json.textNode(text);
  }

  private static int lineOf(Node node) {
    return node.getStartMark() == null ? 1 : node.getStartMark().getLine() + 1;
  }

  private static String firstLine(YAMLException wrong) {
    return wrong.getMessage().lines().findFirst().orElse("unreadable");
  }
}
