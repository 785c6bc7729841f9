package commonsheet.workbench.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.workbench.Served;
import java.io.IOException;
import java.net.ConnectException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Who is let in, and what of the folder and the machine can be reached. The attacks are those of
 * the OWASP Web Security Testing Guide 4.2 that a local server without accounts can meet: path
 * traversal (ATHZ-01), request forgery (SESS-05), rebinding of names (by the Host, INPV-17),
 * methods (CONF-06), and of the OWASP API Security Top 10 2023, API4, resource consumption.
 */
class DoorTest {
  @TempDir private Path home;
  private Path folder;
  private Served served;

  @BeforeEach
  void open() throws IOException {
    folder = Files.createDirectory(home.resolve("records"));
    Served.write(home.resolve("outside.json"));
    served = Served.over(folder);
  }

  @AfterEach
  void close() {
    served.close();
  }

  /** Speaks HTTP by hand, since clients do not let a Host be chosen. Gives the first line. */
  private String status(String request) throws IOException {
    return said(request).lines().findFirst().orElse("");
  }

  private String said(String request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", served.port())) {
      socket.setSoTimeout(10_000);
      String whole = request.replace("\n", "\r\n").replace("PORT", "" + served.port());
      socket
          .getOutputStream()
          .write(whole.replace("KEY", served.key()).getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String get(String path, String... headers) {
    return "GET " + path + " HTTP/1.1\nConnection: close\n" + String.join("\n", headers) + "\n\n";
  }

  @Test
  void itsOwnPagesAreLetIn() throws Exception {
    for (String host : List.of("127.0.0.1", "localhost")) {
      String allowed =
          get(
              "/api/catalogue",
              "Host: " + host + ":PORT",
              "Origin: http://" + host + ":PORT",
              "Sec-Fetch-Site: same-origin",
              "Authorization: Bearer KEY");
      assertEquals("HTTP/1.1 200 OK", status(allowed));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "evil.example:PORT",
        "evil.example",
        "127.0.0.1",
        "127.0.0.1:1",
        "127.0.0.1:80",
        "127.0.0.1.evil.example:PORT",
        "localhost.evil.example:PORT",
        "LOCALHOST.:PORT",
        "[::1]:PORT",
        "0.0.0.0:PORT",
      })
  void aNameThatIsMadeToPointHereIsNot(String host) throws Exception {
    String request = get("/api/catalogue", "Host: " + host, "Authorization: Bearer KEY");
    assertTrue(status(request).matches("HTTP/1.1 (403|400) .*"), status(request));
    assertTrue(status(get("/", "Host: " + host)).matches("HTTP/1.1 (403|400) .*"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Origin: http://evil.example",
        "Origin: http://localhost:1",
        "Origin: http://127.0.0.1",
        "Origin: null",
        "Origin: https://127.0.0.1:PORT",
        "Sec-Fetch-Site: cross-site",
        "Sec-Fetch-Site: same-site",
        "Sec-Fetch-Site: none",
      })
  void otherPagesAreNot(String header) throws Exception {
    String request =
        get("/api/catalogue", "Host: 127.0.0.1:PORT", header, "Authorization: Bearer KEY");
    assertEquals("HTTP/1.1 403 Forbidden", status(request));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "X: y",
        "Authorization: Bearer ",
        "Authorization: KEY",
        "Authorization: bearer KEY",
        "Authorization: Bearer KEYx",
        "Authorization: Basic KEY",
        "Cookie: commonsheet-key=KEY",
      })
  void nothingIsAnsweredWithoutTheKey(String header) throws Exception {
    for (String path :
        List.of("/api/catalogue", "/api/folder", "/api/record?file=a.json", "/api/nothing")) {
      assertEquals(
          "HTTP/1.1 403 Forbidden", status(get(path, "Host: 127.0.0.1:PORT", header)), path);
    }
  }

  @Test
  void theKeyIsAnotherAtEveryStart() throws Exception {
    String before = served.key();
    assertTrue(before.length() >= 32, before);
    served.restart();
    assertFalse(before.equals(served.key()));
  }

  @Test
  void anAddressForStartingABrowserIsGoodOnce() throws Exception {
    String first = ticket(served.workbench().addressForOnce());
    String second = ticket(served.workbench().addressForOnce());
    assertEquals(403, exchanged(first).status());
    assertEquals(served.key(), exchanged(second).json().get("key").asText());
    assertEquals(403, exchanged(second).status());
    assertEquals(422, exchanged("").status());
    assertFalse(second.equals(served.key()));
  }

  private static String ticket(String address) {
    return address.replaceAll(".*#once=", "");
  }

  private Served.Answer exchanged(String ticket) throws Exception {
    return served.post("/api/key", Map.of("ticket", ticket));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../outside.json",
        "..\\outside.json",
        "x/../../outside.json",
        "/etc/passwd",
        "/etc/passwd.json",
        "file:///etc/passwd.json",
        "..%2foutside.json",
        "link.json",
        "away/outside.json",
        ".commonsheet/undo/x.json",
        ".hidden.json",
        "",
        ".",
        "a\u0000.json",
        "tarn-cells-tc-26e.json/",
        "notes.txt",
        "folder.json",
        "\uD800.json",
      })
  void noRequestReachesAFileOutsideOrAnotherKindOfFile(String name) throws Exception {
    Files.createSymbolicLink(folder.resolve("link.json"), home.resolve("outside.json"));
    Files.createSymbolicLink(folder.resolve("away"), home);
    Served.write(folder.resolve(".hidden.json"));
    Served.write(folder.resolve("notes.txt"));
    Files.createDirectory(folder.resolve("folder.json"));
    byte[] outside = Files.readAllBytes(home.resolve("outside.json"));
    assertEquals(404, served.get("/api/record", "file", name).status(), name);
    assertEquals(404, served.get("/api/record/version", "file", name).status(), name);
    assertEquals(
        404, served.get("/api/differences", "first", name, "second", Served.FILE).status(), name);
    int status =
        served
            .post(
                "/api/record/change",
                Map.of("file", name, "version", "x", "by", "Eve", "deed", Map.of("do", "prepared")))
            .status();
    assertTrue(status == 404 || (name.isEmpty() && status == 422), name + " " + status);
    assertEquals(
        new String(outside, StandardCharsets.UTF_8),
        Files.readString(home.resolve("outside.json")));
  }

  @Test
  void aRecordThatALinkWithinTheFolderLeadsToIsChangedItselfAndTheLinkStays() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("again.json"), Path.of(Served.FILE));
    String version = served.get("/api/record", "file", "again.json").json().get("version").asText();
    assertEquals(
        200,
        served
            .post(
                "/api/record/change",
                Map.of(
                    "file",
                    "again.json",
                    "version",
                    version,
                    "by",
                    "Ada",
                    "deed",
                    Map.of("do", "prepared")))
            .status());
    assertTrue(Files.isSymbolicLink(link));
    assertFalse(version.equals(served.view().get("version").asText()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../../etc/passwd",
        "/css/../../../../etc/passwd",
        "/%2e%2e/%2e%2e/etc/passwd",
        "/lit/../../../../log4j.properties",
        "/lit/%2e%2e%2f%2e%2e%2fpom.xml",
        "/commonsheet/schemas/cell-record.schema.json",
        "/js//main.js",
        "//evil.example/main.js",
        "/js/main.js%00.css",
        "/js/main.class",
      })
  void pagesAreOnlyThoseOfTheWorkbench(String path) throws Exception {
    String answer = said(get(path, "Host: 127.0.0.1:PORT"));
    assertTrue(answer.matches("(?s)HTTP/1.1 (400|404) .*"), answer);
    assertFalse(answer.contains("root:"), answer);
  }

  @Test
  void everyAnswerForbidsForeignCodeFramesAndRequests() throws Exception {
    for (String path : List.of("/", "/js/main.js", "/nothing", "/api/catalogue", "/api/nothing")) {
      var headers = served.sent(served.request(path).GET().build()).whole().headers();
      String policy = headers.firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.contains("default-src 'none'"), path);
      assertTrue(policy.contains("script-src 'self'"), path);
      assertTrue(policy.contains("frame-ancestors 'none'"), path);
      assertFalse(policy.contains("unsafe"), path);
      assertEquals("nosniff", headers.firstValue("X-Content-Type-Options").orElse(""), path);
      assertEquals("no-referrer", headers.firstValue("Referrer-Policy").orElse(""), path);
      assertEquals("no-store", headers.firstValue("Cache-Control").orElse(""), path);
      assertTrue(headers.firstValue("Access-Control-Allow-Origin").isEmpty(), path);
      assertTrue(headers.firstValue("Set-Cookie").isEmpty(), path);
    }
  }

  @Test
  void bodiesThatAreTooLargeTooDeepOrNoJsonAreRefusedAndTheNextIsAnswered() throws Exception {
    String deep = "{\"file\": " + "[".repeat(200_000) + "]".repeat(200_000) + "}";
    assertEquals(422, served.post("/api/record/change", deep).status());
    for (String body : List.of("", "{", "[]", "7", "null", "{\"a\": 1} x", "{\"a\":1,\"a\":2}")) {
      assertEquals(422, served.post("/api/record/change", body).status(), body);
    }
    String large = "{\"file\": \"" + "x".repeat(9 * 1024 * 1024) + "\"}";
    Served.Answer refused = served.post("/api/record/change", large);
    assertEquals(413, refused.status());
    assertFalse(refused.sentence().isEmpty());
    String longText = "{\"do\": \"cell\", \"member\": \"model\", \"text\": \"%s\"}";
    assertEquals(422, served.deed("Ada", longText.formatted("x".repeat(20_000))).status());
    assertEquals(200, served.deed("Ada", longText.formatted("<script>alert(1)</script>")).status());
    assertEquals("<script>alert(1)</script>", served.view().at("/cell/1/text").asText());
  }

  @Test
  void onlyJsonIsTakenForAChange() throws Exception {
    for (String type : List.of("text/plain", "application/x-www-form-urlencoded", "")) {
      HttpRequest.Builder request = served.request("/api/record/change");
      if (!type.isEmpty()) {
        request.header("Content-Type", type);
      }
      HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofString("{}");
      assertEquals(422, served.sent(request.POST(body).build()).status(), type);
    }
  }

  @Test
  void otherMethodsAndPathsAreRefusedWithASentence() throws Exception {
    HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofString("{}");
    for (String method : List.of("PUT", "DELETE", "PATCH", "OPTIONS")) {
      Served.Answer answer =
          served.sent(served.request("/api/record").method(method, body).build());
      assertEquals(404, answer.status(), method);
      assertFalse(answer.sentence().isEmpty(), method);
    }
    assertEquals(404, served.post("/api/nothing", "{}").status());
    assertEquals(404, served.get("/api/nothing").status());
  }

  @Test
  void whatIsNoRecordIsSaidSo() throws Exception {
    Files.writeString(folder.resolve("broken.json"), "{\"id\": <b>");
    Served.Answer broken = served.get("/api/record", "file", "broken.json");
    assertEquals(422, broken.status());
    assertTrue(broken.sentence().contains("broken.json"), broken.sentence());
    Files.writeString(folder.resolve("deep.json"), "[".repeat(200_000));
    assertEquals(422, served.get("/api/record", "file", "deep.json").status());
  }

  @Test
  void onlyThisMachineReachesIt() throws Exception {
    List<InetAddress> others =
        NetworkInterface.networkInterfaces()
            .flatMap(NetworkInterface::inetAddresses)
            .filter(a -> a instanceof Inet4Address && !a.isLoopbackAddress())
            .toList();
    for (InetAddress other : others) {
      assertThrows(ConnectException.class, () -> new Socket(other, served.port()).close());
    }
  }
}
