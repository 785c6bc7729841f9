package commonsheet.sheet;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * Where this machine keeps what can be worked out again: the folder named by {@code
 * COMMONSHEET_CACHE}, otherwise the usual one of the platform ({@code XDG_CACHE_HOME} or {@code
 * ~/.cache} by the XDG Base Directory Specification 0.8, {@code ~/Library/Caches} on macOS, {@code
 * %LOCALAPPDATA%} on Windows), in it {@code commonsheet}.
 */
final class KeptFolder {
  private static final String OFF = "off";
  private static final String OWN = "commonsheet";

  private final UnaryOperator<String> variables;
  private final UnaryOperator<String> properties;

  /**
   * @param variables of the environment by their names, null for none
   * @param properties of the Java machine, likewise
   */
  KeptFolder(UnaryOperator<String> variables, UnaryOperator<String> properties) {
    this.variables = variables;
    this.properties = properties;
  }

  static Path ofMachine() {
    return new KeptFolder(System::getenv, System::getProperty).folder();
  }

  /** The folder; null where nothing is to be kept or no place for it is known. */
  Path folder() {
    String asked =
        first(properties.apply("commonsheet.cache"), variables.apply("COMMONSHEET_CACHE"));
    try {
      if (asked != null) {
        return asked.equalsIgnoreCase(OFF) ? null : Path.of(asked);
      }
      return usual();
    } catch (InvalidPathException unusable) {
      return null;
    }
  }

  private Path usual() {
    String given = first(variables.apply("XDG_CACHE_HOME"), null);
    if (given != null && Path.of(given).isAbsolute()) {
      return Path.of(given, OWN);
    }
    String system = String.valueOf(properties.apply("os.name")).toLowerCase(Locale.ROOT);
    String local = first(variables.apply("LOCALAPPDATA"), null);
    if (system.startsWith("windows") && local != null) {
      return Path.of(local, OWN);
    }
    String home = first(properties.apply("user.home"), null);
    if (home == null || !Path.of(home).isAbsolute()) {
      return null;
    }
    return system.startsWith("mac")
        ? Path.of(home, "Library", "Caches", OWN)
        : Path.of(home, ".cache", OWN);
  }

  private static String first(String one, String other) {
    return one != null && !one.isBlank() ? one : other != null && !other.isBlank() ? other : null;
  }
}
