package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordJson;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/**
 * The records themselves on standard output, for scripts: for one file that describes one cell its
 * record, otherwise an array of records, printed while they are read. Remarks go to standard error.
 */
final class JsonReport implements ReadReport {
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean singleFile;
  private boolean open;

  JsonReport(PrintWriter out, PrintWriter err, boolean singleFile) {
    this.out = out;
    this.err = err;
    this.singleFile = singleFile;
  }

  @Override
  public void sheet(Path file, List<Written> records, List<String> remarks) {
    if (singleFile && records.size() == 1) {
      out.print(RecordJson.write(records.get(0).record()));
    } else {
      records.forEach(written -> next(written.record()));
    }
    out.flush();
    remarks.forEach(remark -> err.println("commonsheet: " + file + ": " + remark));
    err.flush();
  }

  @Override
  public void end(ReadCounts counts) {
    if (open) {
      out.print("\n]\n");
    } else if (!singleFile) {
      out.print("[]\n");
    }
    out.flush();
  }

  private void next(CellRecord record) {
    out.print(open ? ",\n" : "[\n");
    out.print(RecordJson.write(record).stripTrailing());
    open = true;
  }
}
