package commonsheet.cli;

import commonsheet.record.CellRecord;
import java.nio.file.Path;
import java.util.List;

/** Tells what a run of {@code read} reads, while it reads. Failures are told elsewhere. */
interface ReadReport {
  /**
   * A sheet was read.
   *
   * @param remarks what else to say of the sheet, such as which pages are pictures
   */
  void sheet(Path file, List<Written> records, List<String> remarks);

  /** The run is over. */
  void end(ReadCounts counts);

  /**
   * A record and its file.
   *
   * @param file null where it was not written to a file
   */
  record Written(CellRecord record, Path file) {}
}
