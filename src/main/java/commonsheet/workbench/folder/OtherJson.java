package commonsheet.workbench.folder;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tells JSON files that never were records from records that are damaged. */
final class OtherJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** How the schema of a record is called, whatever its version. */
  private static final String RECORD = "commonsheet/cell-record/";

  private OtherJson() {}

  /** Whether a file that cannot be read as a record is whole JSON of another kind. */
  static boolean isOther(Path file) {
    try {
      JsonNode content = JSON.readTree(Files.readAllBytes(file));
      return !content.isMissingNode() && !content.path("schema").asText().startsWith(RECORD);
    } catch (JacksonException damaged) {
      return false;
    } catch (IOException unreadable) {
      return false;
    }
  }
}
