package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What a schema says about the members of an object: its keywords {@code properties}, {@code
 * required} and {@code additionalProperties} in one walk through the members.
 */
final class MemberTest {
  /** So many members are sooner looked up one by one than told apart from all that are there. */
  private static final int FEW = 2;

  private record Member(Predicate<JsonNode> test, boolean isRequired) {}

  private MemberTest() {}

  /**
   * The test of an object.
   *
   * @param tests by the name of the member
   * @param required names of members that have to be there
   * @param others the test of members that have none by name, or one that is passed by all
   */
  static Predicate<JsonNode> of(
      Map<String, Predicate<JsonNode>> tests, List<String> required, Predicate<JsonNode> others) {
    boolean anyOthers = others == PlainlySound.ALL;
    return anyOthers && tests.size() <= FEW && required.size() <= FEW
        ? each(tests, required)
        : all(tests, Set.copyOf(required), others);
  }

  private static Predicate<JsonNode> each(
      Map<String, Predicate<JsonNode>> tests, List<String> required) {
    List<Predicate<JsonNode>> every = new ArrayList<>();
    Set<String> needed = new HashSet<>(required);
    tests.forEach(
        (name, test) -> {
          boolean isNeeded = needed.remove(name);
          every.add(
              node -> {
                JsonNode member = node.get(name);
                return member == null ? !isNeeded : test.test(member);
              });
        });
    needed.forEach(name -> every.add(node -> node.has(name)));
    return PlainlySound.all(every);
  }

  private static Predicate<JsonNode> all(
      Map<String, Predicate<JsonNode>> tests, Set<String> required, Predicate<JsonNode> others) {
    Map<String, Member> members = new HashMap<>();
    tests.forEach((name, test) -> members.put(name, new Member(test, required.contains(name))));
    required.forEach(name -> members.putIfAbsent(name, new Member(others, true)));
    return node -> {
      int found = 0;
      for (Map.Entry<String, JsonNode> entry : node.properties()) {
        Member member = members.get(entry.getKey());
        if (!(member == null ? others : member.test).test(entry.getValue())) {
          return false;
        }
        found += member != null && member.isRequired ? 1 : 0;
      }
      // No name is there twice, so as many as are required are all of them.
      return found == required.size();
    };
  }
}
