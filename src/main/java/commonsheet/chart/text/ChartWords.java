package commonsheet.chart.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import commonsheet.quantity.Dimension;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The words of words.yaml, loaded once. */
public final class ChartWords {
  private static final class Standard {
    private static final ChartWords WORDS = load("words.yaml");
  }

  private final PhraseFinder<Measure> measures = new PhraseFinder<>();
  private final Map<Measure, List<Dimension>> dimensions = new LinkedHashMap<>();
  private final PhraseFinder<Context> contexts = new PhraseFinder<>();
  private final PhraseFinder<Boolean> ends = new PhraseFinder<>();
  private final PhraseFinder<Boolean> rests = new PhraseFinder<>();
  private final PhraseFinder<String> kinds = new PhraseFinder<>();
  private final List<String> labelWords = new ArrayList<>();

  private ChartWords(JsonNode file) {
    for (JsonNode node : file.path("measures")) {
      Measure measure = new Measure(node.path("quantity").asText(), node.path("unit").asText());
      measures.addAll(node.path("say"), measure);
      List<Dimension> measured = new ArrayList<>();
      node.path("dimensions").forEach(name -> measured.add(Dimension.valueOf(name.asText())));
      dimensions.put(measure, List.copyOf(measured));
    }
    contexts.addAll(file.path("contexts").path("charge"), Context.CHARGE);
    contexts.addAll(file.path("contexts").path("discharge"), Context.DISCHARGE);
    contexts.addAll(file.path("contexts").path("both"), Context.BOTH);
    ends.addAll(file.path("ends"), true);
    rests.addAll(file.path("rests"), true);
    for (Map.Entry<String, JsonNode> kind : file.path("kinds").properties()) {
      kinds.addAll(kind.getValue(), kind.getKey());
    }
    file.path("labelWords").forEach(word -> labelWords.add(ChartText.lower(word.asText())));
  }

  public static ChartWords standard() {
    return Standard.WORDS;
  }

  private static ChartWords load(String name) {
    try (InputStream in = ChartWords.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file chart/" + name);
      }
      return new ChartWords(new ObjectMapper(new YAMLFactory()).readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException("the program's file chart/" + name + " is broken", e);
    }
  }

  public PhraseFinder<Measure> measures() {
    return measures;
  }

  public PhraseFinder<Context> contexts() {
    return contexts;
  }

  public PhraseFinder<Boolean> ends() {
    return ends;
  }

  public PhraseFinder<Boolean> rests() {
    return rests;
  }

  public PhraseFinder<String> kinds() {
    return kinds;
  }

  public boolean isLabelWord(String word) {
    return labelWords.contains(ChartText.lower(word));
  }

  public boolean fits(Measure measure, Dimension dimension) {
    return dimensions.getOrDefault(measure, List.of()).contains(dimension);
  }

  /** What a unit alone tells: the first measure it fits, or null. */
  public Measure measuredIn(Dimension dimension) {
    if (dimension == Dimension.RATIO) {
      return null;
    }
    for (Map.Entry<Measure, List<Dimension>> entry : dimensions.entrySet()) {
      if (entry.getValue().contains(dimension)) {
        return entry.getKey();
      }
    }
    return null;
  }
}
