package commonsheet.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks records against {@code cell-record.schema.json} and, where the schema cannot say it,
 * against themselves: ranges the right way round, ids used once and names of statements that exist.
 */
public final class RecordValidator {
  private RecordValidator() {}

  /**
   * Makes the first validation as quick as later ones: reading the schema takes some time, which a
   * program can spend beside other work.
   */
  public static void prepare() {
    RecordSchema.compileNow();
  }

  /**
   * What is wrong with a record, in the order of its members; empty for a valid one.
   *
   * @return sentences that begin with the place as a JSON pointer, such as {@code /statements/0:
   *     "evidence" is missing}
   */
  public static List<String> problems(String json) {
    try {
      return problems(RecordJson.tree(json));
    } catch (JsonProcessingException e) {
      return List.of(RecordJson.notJson(e));
    }
  }

  static List<String> problems(JsonNode record) {
    List<String> problems = new ArrayList<>(RecordSchema.problems(record));
    if (problems.isEmpty()) {
      problems.addAll(RecordConsistency.problems(record));
    }
    return List.copyOf(problems);
  }

  /** The first problem, and how many more there are. */
  static String summary(List<String> problems) {
    return problems.size() == 1
        ? problems.get(0)
        : problems.get(0) + " (and " + (problems.size() - 1) + " more)";
  }
}
