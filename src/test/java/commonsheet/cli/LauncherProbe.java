package commonsheet.cli;

/**
 * Stands in for the program in {@link LauncherTest}: prints its arguments, one per line, and ends
 * with their number, or 0 where it is asked for its version.
 */
final class LauncherProbe {
  private LauncherProbe() {}

  public static void main(String[] arguments) {
    System.out.println(String.join("\n", arguments));
    System.exit(arguments[0].equals("--version") ? 0 : arguments.length);
  }
}
