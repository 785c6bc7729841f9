package commonsheet.cli;

import commonsheet.layout.LayoutException;
import commonsheet.layout.LayoutLibrary;
import java.nio.file.Path;

/** Loads the layout rules that a command works with. */
final class Layouts {
  private Layouts() {}

  /**
   * The built-in rules and those of a folder.
   *
   * @param folder null for the built-in rules only
   * @throws CommandException for a folder or rule file that is not as it should be
   */
  static LayoutLibrary load(Path folder) throws CommandException {
    try {
      return LayoutLibrary.load(folder);
    } catch (LayoutException wrong) {
      throw new CommandException(ExitStatus.USAGE, wrong.getMessage());
    }
  }
}
