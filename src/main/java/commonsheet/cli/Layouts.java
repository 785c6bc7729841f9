package commonsheet.cli;

import commonsheet.layout.LayoutException;
import commonsheet.layout.LayoutLibrary;
import commonsheet.layout.RecordReader;
import java.nio.file.Path;

/** Loads the layout rules that a command works with. */
final class Layouts {
  private Layouts() {}

  /**
   * A reader by the built-in rules and those of a folder. Where there is no folder, nothing can be
   * wrong, and the rules load beside the work that follows.
   *
   * @param folder null for the built-in rules only
   * @throws CommandException for a folder or rule file that is not as it should be
   */
  static Ahead<RecordReader> reader(Path folder) throws CommandException {
    if (folder == null) {
      return Ahead.of(() -> new RecordReader(LayoutLibrary.load(null)));
    }
    try {
      LayoutLibrary library = LayoutLibrary.load(folder);
      return Ahead.of(() -> new RecordReader(library));
    } catch (LayoutException wrong) {
      throw new CommandException(ExitStatus.USAGE, wrong.getMessage());
    }
  }
}
