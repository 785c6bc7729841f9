package commonsheet.workbench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** A workbench asked as its own pages ask it, but without a browser. */
public final class Requests implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Workbench workbench;
  private final HttpClient client = HttpClient.newHttpClient();
  private final String server;
  private final String key;

  private Requests(Workbench workbench) {
    this.workbench = workbench;
    String[] address = workbench.address().split("/#key=");
    this.server = address[0];
    this.key = address[1];
  }

  /** A workbench over a folder, on a free port. */
  public static Requests to(Path folder, Path... sheets) throws IOException {
    return new Requests(Workbench.open(new WorkbenchSettings(folder, List.of(sheets), 0, null)));
  }

  /**
   * The answer to a question.
   *
   * @param path such as {@code place/words}
   * @param parameters names and values in turn
   */
  public HttpResponse<byte[]> ask(String path, String... parameters)
      throws IOException, InterruptedException {
    StringBuilder query = new StringBuilder();
    for (int i = 0; i < parameters.length; i += 2) {
      query
          .append(i == 0 ? '?' : '&')
          .append(parameters[i])
          .append('=')
          .append(URLEncoder.encode(parameters[i + 1], StandardCharsets.UTF_8));
    }
    return send(request(path + query).GET());
  }

  /** The answer to a question, as JSON. */
  public JsonNode get(String path, String... parameters) throws IOException, InterruptedException {
    return JSON.readTree(ask(path, parameters).body());
  }

  /** The answer to a request with a body. */
  public HttpResponse<byte[]> tell(String path, String body)
      throws IOException, InterruptedException {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  /** The answer to a request with a body, as JSON. */
  public JsonNode post(String path, String body) throws IOException, InterruptedException {
    return JSON.readTree(tell(path, body).body());
  }

  /** What a browser is opened with. */
  public String address() {
    return workbench.address();
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(server + "/api/" + path))
        .header("Authorization", "Bearer " + key);
  }

  private HttpResponse<byte[]> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  @Override
  public void close() {
    workbench.close();
  }
}
