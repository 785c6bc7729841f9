package commonsheet.workbench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A workbench over a folder with one record, and a client of its pages' requests. */
public final class Served implements AutoCloseable {
  /** The name of the record's file. */
  public static final String FILE = "tarn-cells-tc-26e.json";

  public static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient client = HttpClient.newHttpClient();
  private final Path folder;
  private Workbench workbench;

  /** An answer: its status and its JSON. */
  public record Answer(int status, JsonNode json, HttpResponse<String> whole) {
    /** What it says where it refuses. */
    public String sentence() {
      return json.path("sentence").asText();
    }
  }

  private Served(Path folder, Workbench workbench) {
    this.folder = folder;
    this.workbench = workbench;
  }

  /** Opens it over a folder that gets the sample record. */
  public static Served over(Path folder) throws IOException {
    write(folder.resolve(FILE));
    return new Served(folder, open(folder));
  }

  /** Writes the sample record. */
  public static void write(Path file) throws IOException {
    try (InputStream in = Served.class.getResourceAsStream("/record/samples/" + FILE)) {
      Files.write(file, in.readAllBytes());
    }
  }

  private static Workbench open(Path folder) throws IOException {
    return Workbench.open(new WorkbenchSettings(folder, List.of(), 0, null));
  }

  /** Ends the program and starts it anew. */
  public void restart() throws IOException {
    workbench.close();
    workbench = open(folder);
  }

  public Path file() {
    return folder.resolve(FILE);
  }

  public Workbench workbench() {
    return workbench;
  }

  public int port() {
    return URI.create(workbench.address()).getPort();
  }

  public String key() {
    return workbench.address().replaceAll(".*#key=", "");
  }

  /** Asks for something, such as {@code get("/api/record", "file", "a.json")}. */
  public Answer get(String path, String... parameters) throws IOException, InterruptedException {
    StringBuilder query = new StringBuilder();
    for (int i = 0; i < parameters.length; i += 2) {
      query.append(i == 0 ? '?' : '&').append(parameters[i]).append('=');
      query.append(URLEncoder.encode(parameters[i + 1], StandardCharsets.UTF_8));
    }
    return sent(request(path + query).GET().build());
  }

  /** Sends a text as JSON. */
  public Answer post(String path, String body) throws IOException, InterruptedException {
    return sent(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  public Answer post(String path, Object body) throws IOException, InterruptedException {
    return post(path, JSON.writeValueAsString(body));
  }

  /** A request with the key, to be completed. */
  public HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + path))
        .header("Authorization", "Bearer " + key());
  }

  public Answer sent(HttpRequest request) throws IOException, InterruptedException {
    HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
    String type = answer.headers().firstValue("Content-Type").orElse("");
    JsonNode json =
        type.startsWith("application/json") ? JSON.readTree(answer.body()) : JSON.nullNode();
    return new Answer(answer.statusCode(), json, answer);
  }

  /** The record as its page would get it. */
  public JsonNode view() throws IOException, InterruptedException {
    return get("/api/record", "file", FILE).json();
  }

  /** A deed of a person at the record as it is now. */
  public Answer deed(String by, String deed) throws IOException, InterruptedException {
    return deed(by, view().get("version").asText(), deed);
  }

  /** A deed at the record as it was at a version. */
  public Answer deed(String by, String version, String deed)
      throws IOException, InterruptedException {
    return post(
        "/api/record/change",
        Map.of("file", FILE, "version", version, "by", by, "deed", JSON.readTree(deed)));
  }

  /** undo, redo or approve. */
  public Answer step(String what, String by) throws IOException, InterruptedException {
    return post(
        "/api/record/" + what,
        Map.of("file", FILE, "version", view().get("version").asText(), "by", by));
  }

  /** A part of a record's view. */
  public static JsonNode part(JsonNode view, String id) {
    for (JsonNode part : view.get("parts")) {
      if (part.get("id").asText().equals(id)) {
        return part;
      }
    }
    throw new AssertionError("no " + id);
  }

  @Override
  public void close() {
    workbench.close();
  }
}
