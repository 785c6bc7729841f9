package commonsheet.workbench.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Lets in only the pages of this workbench. The server listens on the loopback address, which every
 * program and every web page on the machine can reach, so: the Host must be ours (against names
 * that are made to point here), the Origin must be ours where there is one, and everything but the
 * empty pages needs the key that was made for this start. The key travels in the part of the
 * address that browsers keep to themselves (after the #), then in a header, never in a cookie,
 * which other servers of the same machine would be sent.
 */
public final class Guard {
  private static final int KEY_BYTES = 24;
  private static final String SCHEME = "Bearer ";

  /** No outside request, no code but ours, and no markup from the text of a sheet. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:;"
          + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  /** Where tickets are exchanged for the key. */
  static final String TICKETS = "/api/key";

  private static final String JSON = "application/json";

  /** Time enough for a browser to start on a slow machine. */
  private static final Duration VALID = Duration.ofMinutes(3);

  /** With the time of {@link System#nanoTime}. */
  private record Ticket(String word, long made) {}

  private final String key;
  private final AtomicReference<Ticket> tickets = new AtomicReference<>();

  private Guard(String key) {
    this.key = key;
  }

  /** A guard with a new key. */
  public static Guard create() {
    return new Guard(word());
  }

  private static String word() {
    byte[] bytes = new byte[KEY_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** The key of this start. */
  public String key() {
    return key;
  }

  /**
   * Refuses requests that do not come from our own pages.
   *
   * @throws Refusal for these
   */
  public void check(Context request) {
    answerSafely(request);
    // Not request.port(), which is the port that the request says it was sent to.
    int port = request.req().getLocalPort();
    Set<String> hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
    String host = request.header("Host");
    if (host == null || !hosts.contains(host)) {
      throw forbidden("This address is not the workbench's own");
    }
    String origin = request.header("Origin");
    if (origin != null && !origin.equals("http://" + host)) {
      throw forbidden("Another page asked for this");
    }
    String site = request.header("Sec-Fetch-Site");
    boolean page = !request.path().startsWith("/api/");
    if (site != null && !site.equals("same-origin") && !(page && site.equals("none"))) {
      throw forbidden("Another page asked for this");
    }
    if (!page && !request.path().equals(TICKETS) && !hasKey(request)) {
      throw forbidden("The key is missing or from an earlier start");
    }
    String type = request.contentType();
    if (request.method() == HandlerType.POST && (type == null || !type.startsWith(JSON))) {
      // Forms of other pages can send anything but this without asking us first.
      throw new Refusal(Refusal.Kind.UNUSABLE, "Requests for a change have to be of type JSON.");
    }
  }

  /**
   * A word that gives the key once, within some minutes. It stands in the address that a browser is
   * started with, since every user of the machine can see with what programs are started. The word
   * before it no longer gives anything.
   */
  public String ticket() {
    Ticket ticket = new Ticket(word(), System.nanoTime());
    tickets.set(ticket);
    return ticket.word();
  }

  /**
   * The key, for a ticket.
   *
   * @throws Refusal for one that is not the last, has been used, or is too old
   */
  String redeemed(String word) {
    Ticket ticket = tickets.get();
    boolean good =
        ticket != null
            && isSame(word, ticket.word())
            && System.nanoTime() - ticket.made() < VALID.toNanos()
            && tickets.compareAndSet(ticket, null);
    if (!good) {
      throw forbidden("This address was good for once only, and for some minutes");
    }
    return key;
  }

  private static boolean isSame(String given, String expected) {
    return MessageDigest.isEqual(
        given.getBytes(StandardCharsets.UTF_8), expected.getBytes(StandardCharsets.UTF_8));
  }

  private boolean hasKey(Context request) {
    String given = request.header("Authorization");
    return given != null && isSame(given, SCHEME + key);
  }

  private static void answerSafely(Context answer) {
    answer.header("Content-Security-Policy", POLICY);
    answer.header("X-Content-Type-Options", "nosniff");
    answer.header("Referrer-Policy", "no-referrer");
    answer.header("Cross-Origin-Opener-Policy", "same-origin");
    answer.header("Cross-Origin-Resource-Policy", "same-origin");
    answer.header("Cache-Control", "no-store");
  }

  private static Refusal forbidden(String what) {
    return new Refusal(
        Refusal.Kind.FORBIDDEN,
        what + "; open the address that `commonsheet workbench` printed when it started.");
  }
}
