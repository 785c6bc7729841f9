package commonsheet.workbench;

import java.nio.file.Path;
import java.util.List;

/**
 * What a workbench works on.
 *
 * @param folder of the records; sheets are looked for in it as well
 * @param sheets more folders in which the sheets of the records may be
 * @param port to listen on; 0 for any that is free
 * @param layouts folder of layout rule files of the user's own; null for none
 */
public record WorkbenchSettings(Path folder, List<Path> sheets, int port, Path layouts) {
  public WorkbenchSettings {
    sheets = List.copyOf(sheets);
  }
}
