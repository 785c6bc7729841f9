package commonsheet.score;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds the truths of sheets in a folder. */
public final class Truths {
  private static final String PDF = ".pdf";

  private Truths() {}

  /**
   * The truths of a sheet: of {@code NAME.pdf} that is {@code NAME.truth.csv}, or where the folder
   * has none of that name, every {@code NAME.MODEL.truth.csv}, one per model that the sheet
   * describes, in alphabetical order.
   *
   * @param folder where the truths are
   * @param sheetFile file name of the sheet; a folder before it does not matter
   * @return empty if the folder has no truth for this sheet
   * @throws TruthException if the folder or one of the truths cannot be read
   */
  public static List<Truth> forSheet(Path folder, String sheetFile) throws TruthException {
    String name = Path.of(sheetFile).getFileName().toString();
    if (name.toLowerCase(Locale.ROOT).endsWith(PDF)) {
      name = name.substring(0, name.length() - PDF.length());
    }
    Path only = folder.resolve(name + Truth.SUFFIX);
    if (Files.exists(only)) {
      return List.of(Truth.load(only));
    }
    List<Truth> truths = new ArrayList<>();
    for (Path file : perModel(folder, name + ".")) {
      String truth = file.getFileName().toString();
      String model = truth.substring(name.length() + 1, truth.length() - Truth.SUFFIX.length());
      truths.add(Truth.load(file, model));
    }
    return List.copyOf(truths);
  }

  private static List<Path> perModel(Path folder, String start) throws TruthException {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
      for (Path file : all) {
        String name = file.getFileName().toString();
        if (name.startsWith(start)
            && name.endsWith(Truth.SUFFIX)
            && name.length() > start.length() + Truth.SUFFIX.length()) {
          files.add(file);
        }
      }
    } catch (IOException e) {
      throw new TruthException(folder, "is no folder that can be read; give the truths' folder");
    }
    files.sort(null);
    return files;
  }
}
