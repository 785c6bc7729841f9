package commonsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/** A line per cell for people. */
final class TextReport implements ReadReport {
  private final PrintWriter out;
  private final Path folder;

  TextReport(PrintWriter out, Path folder) {
    this.out = out;
    this.folder = folder;
  }

  @Override
  public void sheet(Path file, List<Written> records, List<String> remarks) {
    for (Written written : records) {
      out.println(file + ": " + SheetLine.of(written.record()) + " → " + written.file());
    }
    remarks.forEach(remark -> out.println(file + ": " + remark));
    out.flush();
  }

  @Override
  public void end(ReadCounts counts) {
    if (counts.records() > 0) {
      out.println(
          SheetLine.count(counts.records(), "record")
              + " from "
              + SheetLine.count(counts.sheets(), "sheet")
              + " in "
              + folder
              + left(counts.pictures(), "sheet", " left out: only pictures, no words to read")
              + left(counts.unreadable(), "input", " not read"));
    }
    out.flush();
  }

  private static String left(int number, String noun, String why) {
    return number == 0 ? "" : "; " + SheetLine.count(number, noun) + why;
  }
}
