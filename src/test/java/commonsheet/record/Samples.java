package commonsheet.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Text from the test resources. */
final class Samples {
  private Samples() {}

  /** A record that uses every member of the schema except those of an approval. */
  static String full() throws IOException {
    return text("/record/samples/tarn-cells-tc-26e.json");
  }

  static String text(String resource) throws IOException {
    try (InputStream in = Samples.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
