package commonsheet.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts that an output must equal to the byte, kept under src/test/resources. */
public final class Golden {
  private static final Path EXPECTED = Path.of("src", "test", "resources");
  private static final Path ACTUAL = Path.of("target", "golden");

  private Golden() {}

  /**
   * Compares {@code actual} with the file {@code name}; where they differ, leaves the actual text
   * under target/golden, to be looked at and, if it is right, copied over the expected one.
   */
  public static void assertMatches(String name, String actual) throws IOException {
    Path file = EXPECTED.resolve(name);
    String expected = Files.exists(file) ? Files.readString(file) : "(no file " + file + ")";
    if (!expected.equals(actual)) {
      Path kept = ACTUAL.resolve(name);
      Files.createDirectories(kept.getParent());
      Files.writeString(kept, actual);
    }
    assertEquals(expected, actual, name);
  }
}
