package commonsheet.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The user's browser, started as the system starts it. */
final class DefaultBrowser {
  private DefaultBrowser() {}

  /**
   * Opens an address, and does not wait.
   *
   * @return whether a browser is likely to open; false on a machine without a screen
   */
  static boolean open(String address) {
    List<String> command = command(System.getProperty("os.name", ""), System.getenv(), address);
    if (command.isEmpty()) {
      return false;
    }
    try {
      new ProcessBuilder(command)
          .redirectInput(ProcessBuilder.Redirect.PIPE)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start()
          .getOutputStream()
          .close();
      return true;
    } catch (IOException none) {
      return false;
    }
  }

  /** How a system opens an address; empty where it would be of no use. */
  static List<String> command(String system, Map<String, String> environment, String address) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler", address);
    }
    if (name.startsWith("mac")) {
      return List.of("open", address);
    }
    // Without a screen a browser for terminals would take over the one we print on.
    boolean screen = isSet(environment, "DISPLAY") || isSet(environment, "WAYLAND_DISPLAY");
    return screen ? List.of("xdg-open", address) : List.of();
  }

  private static boolean isSet(Map<String, String> environment, String name) {
    return !environment.getOrDefault(name, "").isBlank();
  }
}
