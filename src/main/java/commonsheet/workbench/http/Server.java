package commonsheet.workbench.http;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.json.JavalinJackson;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Listens on the loopback address and answers, for as long as it is open. */
public final class Server implements AutoCloseable {
  /** The only address it can be reached at. */
  public static final String HOST = "127.0.0.1";

  /** Much more than any record; a body beyond it is not read. */
  private static final long LARGEST_BODY = 8L * 1024 * 1024;

  /** To requests that none of our pages makes: of an unknown address, or far too large. */
  private static final String NOT_ANSWERED =
      "The workbench does not answer such a request; load the page anew.";

  private final Javalin javalin;
  private final Guard guard;

  private Server(Javalin javalin, Guard guard) {
    this.javalin = javalin;
    this.guard = guard;
  }

  /**
   * Starts listening.
   *
   * @param port 0 for any that is free
   * @param json how answers are written
   * @param routes each adds what it answers, below {@code /api/}
   * @throws io.javalin.util.JavalinException where the port cannot be had
   */
  public static Server start(int port, ObjectMapper json, List<Consumer<RoutesConfig>> routes) {
    Guard guard = Guard.create();
    Javalin javalin = Javalin.create(config -> configure(config, json, guard, routes));
    return new Server(javalin.start(HOST, port), guard);
  }

  private static void configure(
      JavalinConfig config, ObjectMapper json, Guard guard, List<Consumer<RoutesConfig>> routes) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.maxRequestSize = LARGEST_BODY;
    config.jsonMapper(new JavalinJackson(json, false));
    config.routes.before(guard::check);
    config.routes.post(
        Guard.TICKETS,
        request ->
            request.json(Map.of("key", guard.redeemed(Given.of(request).required("ticket")))));
    routes.forEach(each -> each.accept(config.routes));
    config.routes.get("/*", Assets::give);
    answerFaults(config.routes);
  }

  private static void answerFaults(RoutesConfig routes) {
    routes.exception(Refusal.class, Server::refuse);
    routes.exception(
        HttpResponseException.class,
        (fault, answer) -> refuse(fault.getStatus(), NOT_ANSWERED, Map.of(), answer));
    routes.exception(
        JacksonException.class,
        (fault, answer) ->
            refuse(
                new Refusal(
                    Refusal.Kind.UNUSABLE,
                    "The request could not be understood; load the page anew."),
                answer));
    routes.exception(
        Exception.class,
        (fault, answer) ->
            refuse(
                new Refusal(
                    Refusal.Kind.UNWRITTEN,
                    "The workbench could not do this ("
                        + fault.getClass().getSimpleName()
                        + "). Load the page anew: it shows what is in the file."),
                answer));
  }

  private static void refuse(Refusal refusal, Context answer) {
    refuse(refusal.status(), refusal.getMessage(), refusal.more(), answer);
  }

  private static void refuse(
      int status, String sentence, Map<String, Object> more, Context answer) {
    Map<String, Object> members = new LinkedHashMap<>(more);
    members.put("sentence", sentence);
    answer.status(status).json(members);
  }

  /**
   * The address for starting a browser with: it is good once and for some minutes, so that whoever
   * sees it in the list of programs has nothing of it.
   */
  public String addressForOnce() {
    return "http://" + HOST + ":" + javalin.port() + "/#once=" + guard.ticket();
  }

  /** The address to open in a browser, with the key of this start. */
  public String address() {
    return "http://" + HOST + ":" + javalin.port() + "/#key=" + guard.key();
  }

  /** The key that requests below {@code /api/} carry in their header Authorization. */
  public String key() {
    return guard.key();
  }

  /** The port it listens on. */
  public int port() {
    return javalin.port();
  }

  @Override
  public void close() {
    javalin.stop();
  }
}
