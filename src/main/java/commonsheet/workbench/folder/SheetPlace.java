package commonsheet.workbench.folder;

import java.nio.file.Path;

/**
 * Where the sheet of a record is.
 *
 * @param file the very file that the record was read from; null where it is not there
 * @param reason why it is not there, or that it has another name now; null where all is well. A
 *     sentence: what, where, what to do
 */
public record SheetPlace(Path file, String reason) {
  /** Whether the page can be shown. */
  public boolean isFound() {
    return file != null;
  }
}
