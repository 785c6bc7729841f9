package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

/** The examples of RFC 8785, and a hash that another program computed. */
class CanonicalJsonTest {
  /** RFC 8785, section 3.2.2: literals, and numbers of up to six digits. */
  @Test
  void printsLiteralsAsTheRfcDoes() throws Exception {
    assertEquals(
        "{\"literals\":[true,false],\"numbers\":[1e+30,4.5,0.002,1e-27],"
            + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}",
        canonical(
            """
            {
              "numbers": [1E30, 4.50, 2e-3, 0.000000000000000000000000001],
              "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
              "literals": [true, false]
            }
            """));
  }

  /** RFC 8785, section 3.2.3: members sorted by UTF-16 code units. */
  @Test
  void sortsMembersAsTheRfcDoes() throws Exception {
    assertEquals(
        "{\"\\r\":1,\"1\":2,\"\u0080\":3,\"ö\":4,\"€\":5,\"\ud83d\ude00\":6,\"\ufb33\":7}",
        canonical(
            "{\"\u20ac\":5,\"\\r\":1,\"\ufb33\":7,\"1\":2,\"\ud83d\ude00\":6,\"\u0080\":3,"
                + "\"\u00f6\":4}"));
  }

  @Test
  void roundsAsRecordFilesDo() throws Exception {
    assertEquals("[2.66011,0.00005,-20,0]", canonical("[2.660113, 5e-5, -20.0, -0.0]"));
  }

  /**
   * Computed from the file by jq 1.6 with sha256sum, and by Node: {@code jq -cSj
   * '{cell,curves,source,statements}' FILE | sha256sum}.
   */
  @Test
  void givesTheHashThatOtherProgramsGive() throws Exception {
    CellRecord record =
        RecordJson.read(
            java.nio.file.Files.readString(
                java.nio.file.Path.of("src/test/resources/record/hashed.json")),
            "hashed.json");
    assertEquals(
        "fc2db4f40892e2a98ab272adff928013f4365d85e4c4114ae3bab79de6749c18", ContentHash.of(record));
  }

  @Test
  void hashesWhatIsApprovedAndNothingElse() {
    Statement mass = Records.statement("s1", "mass", null, 48, "g", Conditions.NONE, 3);
    CellRecord record = Records.with(mass);
    String hash = ContentHash.of(record);
    assertEquals(hash, ContentHash.of(record.with(Review.DRAFT.in(Review.REOPENED))));
    assertNotEquals(hash, ContentHash.of(Records.with(Records.standing(mass, Standing.CONFIRMED))));
    assertNotEquals(
        hash, ContentHash.of(record.with(new Cell("Tarn", "TC", null, null, null, null, null))));
  }

  private static String canonical(String json) throws Exception {
    return CanonicalJson.of(new ObjectMapper().readTree(json));
  }
}
