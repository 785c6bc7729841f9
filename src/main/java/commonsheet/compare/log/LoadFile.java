package commonsheet.compare.log;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.compare.Load;
import commonsheet.record.JsonText;
import commonsheet.record.SchemaFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** A load as a file, in the form of {@code schemas/load.schema.json}. */
public final class LoadFile {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final String SCHEMA = "commonsheet/load/1";

  /** A thousand bins take some 100 kB. */
  private static final long MOST_BYTES = 1 << 20;

  private static final int DIGITS = 6;

  private LoadFile() {}

  /** The text of a load file: what was found, numbers to six digits, a line feed at the end. */
  public static String write(LoggedLoad found) {
    ObjectNode file = MAPPER.createObjectNode();
    file.put("schema", SCHEMA);
    LoggedLoad.Source source = found.source();
    file.putObject("source")
        .put("file", source.file())
        .put("sha256", source.sha256())
        .put("timeColumn", source.timeColumn())
        .put("currentColumn", source.currentColumn())
        .put("samples", source.samples())
        .put("discharge", source.discharge().name().toLowerCase(Locale.ROOT));
    file.put("averageCurrent", found.load().averageCurrent());
    file.put("peakCurrent", found.load().peak());
    ArrayNode peaks = file.putArray("sustainedPeaks");
    for (LoggedLoad.Peak peak : found.peaks()) {
      ObjectNode node = peaks.addObject().put("window", peak.window());
      if (peak.current() != null) {
        node.put("current", peak.current());
      }
    }
    file.put("duration", found.duration());
    file.put("charge", found.charge());
    file.put("returnedCharge", found.returned());
    file.put("rest", Math.max(0, found.rest()));
    file.putObject("gaps")
        .put("count", found.gaps().count())
        .put("time", found.gaps().time())
        .put("longest", found.gaps().longest());
    if (found.correction() != null) {
      file.putObject("correction")
          .put("chargedBack", found.correction().chargedBack())
          .put("logged", found.correction().logged())
          .put("factor", found.correction().factor());
    }
    ArrayNode shares = file.putArray("shares");
    for (LoggedLoad.Bin bin : found.bins()) {
      shares
          .addObject()
          .put("low", bin.low())
          .put("high", bin.high())
          .put("current", bin.current())
          .put("time", bin.time());
    }
    ArrayNode notes = file.putArray("notes");
    found.notes().forEach(notes::add);
    return JsonText.of(file, DIGITS);
  }

  /**
   * The load of a file.
   *
   * @throws LoadException where the file cannot be read, or is no load by the schema
   */
  public static Load read(Path path) throws LoadException {
    JsonNode file = tree(path);
    List<String> problems = SchemaFile.named("load").problems(file, "the load");
    if (!problems.isEmpty()) {
      throw new LoadException(
          path + " is no load: " + problems.get(0) + "; write one with commonsheet load");
    }
    Map<Double, Double> shares = new TreeMap<>();
    double whole = 0;
    for (JsonNode share : file.path("shares")) {
      shares.merge(share.path("current").asDouble(), share.path("time").asDouble(), Double::sum);
      whole += share.path("time").asDouble();
    }
    double all = whole;
    try {
      Load given =
          new Load(
              shares.entrySet().stream()
                  .map(e -> new Load.Share(e.getKey(), e.getValue()))
                  .toList());
      return new Load(
              given.shares().stream()
                  .map(s -> new Load.Share(s.current(), s.time() / all))
                  .toList())
          .withPeak(file.path("peakCurrent").asDouble());
    } catch (IllegalArgumentException wrong) {
      throw new LoadException(path + " is no load: " + wrong.getMessage());
    }
  }

  private static JsonNode tree(Path path) throws LoadException {
    try {
      if (!Files.isRegularFile(path)) {
        throw new LoadException(path + ": there is no such file; check the name");
      }
      if (Files.size(path) > MOST_BYTES) {
        throw new LoadException(
            path + " is too large for a load; a log becomes one by commonsheet load");
      }
      JsonNode tree = MAPPER.readTree(Files.readString(path));
      if (tree.isObject()) {
        return tree;
      }
      throw new LoadException(path + " is no load; write one with commonsheet load");
    } catch (JsonProcessingException broken) {
      throw new LoadException(
          path + " is not readable as JSON; a log becomes a load by commonsheet load");
    } catch (IOException failure) {
      throw new LoadException(path + " cannot be read as text; check what it is");
    }
  }
}
