package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The npm package ajv, another implementation of JSON Schema 2020-12, run on record files by {@code
 * .ci/validate/validate.mjs}.
 */
public final class IndependentValidator {
  private static final Path FOLDER = Path.of(".ci", "validate");
  private static final Path SCHEMA = Path.of("schemas", "cell-record.schema.json");

  private IndependentValidator() {}

  /** What ajv says about one file. */
  public record Verdict(boolean valid, List<String> errors) {}

  /** Why it cannot be run here, or nothing if it can. */
  public static Optional<String> whyUnavailable() {
    if (!Files.isDirectory(FOLDER.resolve("node_modules").resolve("ajv"))) {
      return Optional.of("ajv is not installed: run npm ci --prefix .ci/validate");
    }
    try {
      Process node = new ProcessBuilder("node", "--version").start();
      return node.waitFor(10, TimeUnit.SECONDS) && node.exitValue() == 0
          ? Optional.empty()
          : Optional.of("node does not start");
    } catch (IOException e) {
      return Optional.of("node is not installed");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of("interrupted while looking for node");
    }
  }

  /** The verdicts on record files, in their order. */
  public static List<Verdict> verdicts(List<Path> files) throws IOException {
    return verdicts(SCHEMA, files);
  }

  /** The verdicts by any schema, in the order of the files. */
  public static List<Verdict> verdicts(Path schema, List<Path> files) throws IOException {
    List<String> command = new ArrayList<>(List.of("node"));
    command.add(FOLDER.resolve("validate.mjs").toString());
    command.add(schema.toString());
    files.forEach(file -> command.add(file.toString()));
    Process node = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    ObjectMapper mapper = new ObjectMapper();
    List<Verdict> verdicts = new ArrayList<>();
    for (String line : output.lines().toList()) {
      if (!line.startsWith("{")) {
        throw new IOException("validate.mjs failed: " + output);
      }
      JsonNode verdict = mapper.readTree(line);
      List<String> errors = new ArrayList<>();
      verdict.get("errors").forEach(error -> errors.add(error.asText()));
      verdicts.add(new Verdict(verdict.get("valid").asBoolean(), errors));
    }
    return verdicts;
  }
}
