package commonsheet.workbench.folder;

import commonsheet.record.Leftovers;
import commonsheet.workbench.http.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The folder of the records and the further folders of their sheets. Requests name files by their
 * path within the folder, with {@code /}; no request reaches a file outside, not even by a link.
 */
public final class Folder {
  private static final String RECORD = ".json";

  private static final Pattern RECORDS = Pattern.compile(".*\\.json");

  /** What a sheet can be, see docs/sheet.md, but for the pictures that the program itself draws. */
  private static final Pattern SHEETS =
      Pattern.compile("(?i)(?!(.*-)?page-\\d+(-chart-\\d+)?\\.png).*\\.(pdf|png|jpe?g|tiff?)");

  /** Deep enough for folders by maker and model. */
  private static final int DEPTH = 8;

  private final Path folder;
  private final List<Path> sheetFolders;

  private Folder(Path folder, List<Path> sheetFolders) {
    this.folder = folder;
    this.sheetFolders = sheetFolders;
  }

  /**
   * The folder as it is on the disk.
   *
   * @param sheetFolders further ones to look for sheets in
   * @throws IOException where one of them is no folder; its message names it
   */
  public static Folder of(Path folder, List<Path> sheetFolders) throws IOException {
    List<Path> all = new ArrayList<>();
    all.add(real(folder, "name the one that `commonsheet read` wrote its records into"));
    for (Path each : sheetFolders) {
      all.add(real(each, "name one that holds sheets"));
    }
    return new Folder(all.get(0), List.copyOf(all));
  }

  private static Path real(Path folder, String otherwise) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is no folder; " + otherwise);
    }
    if (!Files.isReadable(folder)) {
      throw new IOException(folder + " cannot be read; check its permissions");
    }
    return folder.toRealPath();
  }

  /** Removes what programs that were killed while they wrote records have left. */
  public void tidy() {
    Leftovers.remove(folder, DEPTH);
  }

  /** Where it is. */
  public Path path() {
    return folder;
  }

  /** All folders in which sheets may be; the first is that of the records. */
  public List<Path> sheetFolders() {
    return sheetFolders;
  }

  /** The record files, by name. Hidden files and folders are none. */
  List<FileStamp> recordFiles() {
    return FilesBelow.of(folder, DEPTH, RECORDS);
  }

  /**
   * The sheets in all folders, by folder and name. Hidden files, links, and the pictures that the
   * program drew of charts and pages are none.
   */
  List<FileStamp> sheets() {
    List<FileStamp> sheets = new ArrayList<>();
    for (Path each : sheetFolders) {
      sheets.addAll(FilesBelow.of(each, DEPTH, SHEETS));
    }
    return sheets.stream().distinct().toList();
  }

  /** What requests call a sheet: the number of its folder and its path in there. */
  String sheetName(Path sheet) {
    for (int i = 0; i < sheetFolders.size(); i++) {
      if (sheet.startsWith(sheetFolders.get(i))) {
        return i + "/" + sheetFolders.get(i).relativize(sheet).toString().replace('\\', '/');
      }
    }
    throw new IllegalArgumentException(sheet + " is in none of the folders");
  }

  /**
   * The sheet of such a name.
   *
   * @throws Refusal where there is none
   */
  Path sheet(String name) {
    return sheets().stream()
        .map(FileStamp::path)
        .filter(sheet -> sheetName(sheet).equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Kind.MISSING,
                    "There is no sheet \"" + name + "\" any more; load the page anew."));
  }

  private boolean isHidden(Path file) {
    for (Path part : folder.relativize(file)) {
      if (part.toString().startsWith(".")) {
        return true;
      }
    }
    return false;
  }

  /** What requests call a record file. */
  public String name(Path file) {
    return folder.relativize(file).toString().replace('\\', '/');
  }

  /**
   * The record file of a name.
   *
   * @throws Refusal where there is none in the folder
   */
  public Path record(String name) {
    try {
      if (name != null && name.endsWith(RECORD)) {
        Path file = folder.resolve(name).normalize();
        if (isOwn(file) && Files.isRegularFile(file) && isOwn(file.toRealPath())) {
          return file.toRealPath();
        }
      }
    } catch (IOException | InvalidPathException none) {
      throw missing(name);
    }
    throw missing(name);
  }

  /** In the folder, and neither hidden nor another kind of file. */
  private boolean isOwn(Path file) {
    return file.startsWith(folder) && !isHidden(file) && file.toString().endsWith(RECORD);
  }

  private Refusal missing(String name) {
    return new Refusal(
        Refusal.Kind.MISSING,
        "There is no record \"" + name + "\" in " + folder + "; it may have been moved.");
  }
}
