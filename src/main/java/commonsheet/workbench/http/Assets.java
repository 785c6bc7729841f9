package commonsheet.workbench.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.regex.Pattern;

/** The pages' own files, from the program's jar. */
final class Assets {
  private static final String OWN = "/commonsheet/workbench/";

  /** Where the library that writes the pages stands in its jar; its version is that of pom.xml. */
  private static final String LIT = "/META-INF/resources/webjars/lit-html/3.3.0/";

  private static final Pattern NAME = Pattern.compile("[a-z0-9-]+(/[a-z0-9-]+)*\\.[a-z]+");

  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml");

  private Assets() {}

  /** Gives the file that the path names: {@code /}, {@code /lit/…} or {@code /NAME}. */
  static void give(Context request) {
    String path = request.path().substring(1);
    String name = path.isEmpty() ? "index.html" : path;
    boolean lit = name.startsWith("lit/");
    String resource = lit ? LIT + name.substring("lit/".length()) : OWN + name;
    String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    if (type == null || !NAME.matcher(name).matches()) {
      throw missing(path);
    }
    try (InputStream file = Assets.class.getResourceAsStream(resource)) {
      if (file == null) {
        throw missing(path);
      }
      request.contentType(type);
      request.result(file.readAllBytes());
    } catch (IOException unreadable) {
      throw missing(path);
    }
  }

  private static Refusal missing(String path) {
    return new Refusal(Refusal.Kind.MISSING, "The workbench has no page /" + path + ".");
  }
}
