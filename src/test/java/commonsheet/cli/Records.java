package commonsheet.cli;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.record.WordSource;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Small valid records of an invented cell. */
final class Records {
  private Records() {}

  /** A record as if read from a file of this name, whose content is its name. */
  static CellRecord of(String id, String file, Standing standing) {
    Evidence evidence =
        new Evidence(
            1,
            List.of(72.0, 100.0, 60.0, 10.0),
            "2500 mAh",
            Method.TABLE_CELL,
            "table/capacity",
            WordSource.TEXT,
            null,
            null,
            null);
    List<String> doubts = standing == Standing.UNSURE ? List.of("The unit is not printed.") : null;
    Statement capacity =
        new Statement(
            "s1",
            "capacity",
            Statistic.NOMINAL,
            2.5,
            null,
            null,
            "A.h",
            Conditions.NONE,
            evidence,
            standing,
            doubts);
    return new CellRecord(
        CellRecord.SCHEMA,
        id,
        new Cell("Tarnlight", "TL-25", null, null, null, null, null),
        new Source(null, null, null, null, file, sha256(file), 1, "en", null),
        List.of(capacity),
        List.of(),
        List.of(),
        Review.DRAFT);
  }

  private static String sha256(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException absent) {
      throw new AssertionError("every Java platform has SHA-256", absent);
    }
  }
}
