package commonsheet.review;

import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Statements and curves of a record as a person names them: {@code s3}, {@code c1}, or a range
 * {@code s1-s12}. A range stands for what nobody has settled in it.
 *
 * @param named every id once, in the order of the record; of ranges only those that stand as read
 * @param leftOut unsure ones that a range would have taken in: these are to be named one by one, so
 *     that nothing doubtful is waved through
 */
public record Ids(List<String> named, List<String> leftOut) {
  private static final Pattern ONE = Pattern.compile("[sc][1-9][0-9]*");
  private static final Pattern RANGE = Pattern.compile("([sc])([1-9]\\d{0,8})-\\1?([1-9]\\d{0,8})");

  public Ids {
    named = List.copyOf(named);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Looks the names up.
   *
   * @throws ReviewException for a name that is none, or that the record does not have
   */
  public static Ids of(List<String> words, CellRecord record) throws ReviewException {
    List<String> wanted = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (String word : words) {
      Matcher range = RANGE.matcher(word);
      if (ONE.matcher(word).matches()) {
        require(word, record);
        wanted.add(word);
      } else if (range.matches()) {
        within(range, record, wanted, leftOut);
      } else {
        throw new ReviewException(
            "\"" + word + "\" names no statement or curve; name them as s3, c1 or s1-s12");
      }
    }
    leftOut.removeAll(wanted);
    return new Ids(all(record).filter(wanted::contains).toList(), leftOut);
  }

  /** The ids of all statements and curves, in the order of the record. */
  static Stream<String> all(CellRecord record) {
    return Stream.concat(
        record.statements().stream().map(Statement::id), record.curves().stream().map(Curve::id));
  }

  private static void within(
      Matcher range, CellRecord record, List<String> wanted, List<String> leftOut)
      throws ReviewException {
    String kind = range.group(1);
    require(kind + range.group(2), record);
    require(kind + range.group(3), record);
    int from = Integer.parseInt(range.group(2));
    int to = Integer.parseInt(range.group(3));
    all(record)
        .filter(id -> id.startsWith(kind))
        .filter(id -> number(id) >= Math.min(from, to) && number(id) <= Math.max(from, to))
        .forEach(
            id -> {
              Standing standing = standing(id, record);
              if (standing == Standing.READ) {
                wanted.add(id);
              } else if (standing == Standing.UNSURE) {
                leftOut.add(id);
              }
            });
  }

  private static Standing standing(String id, CellRecord record) {
    Statement statement = record.statement(id);
    return statement == null ? record.curve(id).standing() : statement.standing();
  }

  private static int number(String id) {
    return Integer.parseInt(id.substring(1));
  }

  private static void require(String id, CellRecord record) throws ReviewException {
    if (all(record).noneMatch(id::equals)) {
      throw new ReviewException(
          "the record \"" + record.id() + "\" has no " + id + "; review show lists what it has");
    }
  }
}
