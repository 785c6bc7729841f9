package commonsheet.export.sizing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The npm package jsonld, an implementation of JSON-LD 1.1 that is not ours, run by {@code
 * .ci/validate/jsonld.mjs}. It refuses members that a context does not define, and contexts that
 * would have to be fetched.
 */
final class JsonLdReader {
  private static final Path FOLDER = Path.of(".ci", "validate");

  private JsonLdReader() {}

  /** Why it cannot be run here, or nothing if it can. */
  static Optional<String> whyUnavailable() {
    if (!Files.isDirectory(FOLDER.resolve("node_modules").resolve("jsonld"))) {
      return Optional.of("jsonld is not installed: run npm ci --prefix .ci/validate");
    }
    try {
      return new ProcessBuilder("node", "--version").start().waitFor() == 0
          ? Optional.empty()
          : Optional.of("node does not start");
    } catch (IOException e) {
      return Optional.of("node is not installed");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of("interrupted while looking for node");
    }
  }

  /** What a file says, as N-Quads. */
  static List<String> quads(Path file) throws IOException {
    String script = FOLDER.resolve("jsonld.mjs").toString();
    Process node =
        new ProcessBuilder("node", script, file.toString()).redirectErrorStream(true).start();
    String output = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    JsonNode result = new ObjectMapper().readTree(output.lines().findFirst().orElse("{}"));
    if (!result.path("valid").asBoolean()) {
      throw new IOException("jsonld refuses it: " + output);
    }
    List<String> quads = new ArrayList<>();
    result.get("quads").forEach(quad -> quads.add(quad.asText()));
    return quads;
  }
}
