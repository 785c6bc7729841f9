package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;

/** Records as JSON text: the form of a record file. */
public final class RecordJson {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .defaultPropertyInclusion(
              JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS))
          .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final RecordTree RECORDS = new RecordTree(MAPPER);

  private RecordJson() {}

  /**
   * The text of a record file: members in the order of the record types, numbers rounded to six
   * significant digits and without exponent, two spaces per level, a line feed at the end. Equal
   * records give equal text. Does not check the record; see {@link RecordValidator}.
   *
   * @throws IllegalArgumentException for a number that is not finite
   */
  public static String write(CellRecord record) {
    return JsonText.of(MAPPER.<JsonNode>valueToTree(record));
  }

  /**
   * Reads a record and checks it against its schema. A record whose content is no longer the one
   * that was approved is given as reopened, whatever it says of itself.
   *
   * @param nameForMessages what to call the text in messages, such as its file name
   * @throws RecordException where the text is no JSON or the record is not valid; names the place
   */
  public static CellRecord read(String json, String nameForMessages) throws RecordException {
    JsonNode tree;
    try {
      tree = tree(json);
    } catch (JsonProcessingException e) {
      throw new RecordException(nameForMessages + ": " + notJson(e), e);
    }
    List<String> problems = RecordValidator.problems(tree);
    if (!problems.isEmpty()) {
      throw new RecordException(
          nameForMessages + " is not a valid record: " + RecordValidator.summary(problems));
    }
    try {
      return reopenedIfChanged(record(tree));
    } catch (JsonProcessingException e) {
      throw new RecordException(nameForMessages + ": " + unsuitable(e), e);
    }
  }

  /** The record of a valid tree; the mapper names the place of what does not fit. */
  private static CellRecord record(JsonNode tree) throws JsonProcessingException {
    try {
      return RECORDS.record(tree);
    } catch (JsonProcessingException e) {
      return MAPPER.treeToValue(tree, CellRecord.class);
    }
  }

  private static CellRecord reopenedIfChanged(CellRecord record) {
    Review review = record.review();
    boolean holds =
        !review.state().equals(Review.APPROVED) || ContentHash.of(record).equals(review.content());
    return holds ? record : record.with(review.in(Review.REOPENED));
  }

  /** A record as a tree, numbers not yet rounded. */
  static JsonNode tree(CellRecord record) {
    return MAPPER.valueToTree(record);
  }

  /** Parses text strictly: one value, no member twice. */
  static JsonNode tree(String json) throws JsonProcessingException {
    return MAPPER.readTree(json);
  }

  /** What is wrong with text that is no JSON. */
  static String notJson(JsonProcessingException e) {
    JsonLocation place = e.getLocation();
    String where =
        place == null ? "" : "line " + place.getLineNr() + ", column " + place.getColumnNr() + ": ";
    return where
        + "this is not readable as JSON ("
        + reason(e)
        + "); repair the file or read the sheet again";
  }

  /**
   * The first line of what the library says, without where it read from, which is no file to it.
   */
  private static String reason(JsonProcessingException e) {
    String first = e.getOriginalMessage().lines().findFirst().orElse("no reason given");
    int source = first.indexOf(" (start marker at [Source");
    return source < 0 ? first : first.substring(0, source);
  }

  /** Valid by the schema, and yet more than the Java types hold, such as a page of 20 digits. */
  private static String unsuitable(JsonProcessingException e) {
    StringBuilder pointer = new StringBuilder();
    if (e instanceof JsonMappingException mapping) {
      for (JsonMappingException.Reference step : mapping.getPath()) {
        pointer
            .append('/')
            .append(step.getFieldName() == null ? step.getIndex() : step.getFieldName());
      }
    }
    return pointer
        + ": the value does not fit ("
        + e.getOriginalMessage().lines().findFirst().orElse("no reason given")
        + "); correct it or read the sheet again";
  }
}
