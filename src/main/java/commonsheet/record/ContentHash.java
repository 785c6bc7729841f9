package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * The hash by which an approval knows what was approved: SHA-256 of the members {@code cell},
 * {@code source}, {@code statements} and {@code curves} of the record, in the canonical JSON of RFC
 * 8785. Other programs can compute it from the file; findings and the review itself are not in it.
 */
public final class ContentHash {
  private static final List<String> CONTENT = List.of("cell", "curves", "source", "statements");

  private ContentHash() {}

  /** Lower-case hexadecimal; the same for a record and for the file it was written to. */
  public static String of(CellRecord record) {
    return sha256(canonical(record).getBytes(StandardCharsets.UTF_8));
  }

  /** The text that is hashed. */
  static String canonical(CellRecord record) {
    JsonNode tree = RecordJson.tree(record);
    ObjectNode content = JsonNodeFactory.instance.objectNode();
    CONTENT.forEach(member -> content.set(member, tree.get(member)));
    return CanonicalJson.of(content);
  }

  /** SHA-256 of some bytes, lower-case hexadecimal. */
  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
