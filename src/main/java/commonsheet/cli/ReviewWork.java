package commonsheet.cli;

import commonsheet.api.Consequences;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.StoredRecord;
import commonsheet.review.Approval;
import commonsheet.review.Person;
import commonsheet.review.Progress;
import commonsheet.review.RecordDesk;
import commonsheet.review.ReviewException;
import commonsheet.review.Settling;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands that change a record have in common: the record, the person, what follows. */
final class ReviewWork {
  private static final RecordDesk DESK = new RecordDesk(Consequences::drawn);

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record file.")
  private Path file;

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description = "Who you are; the variable COMMONSHEET_PERSON when not given.",
      defaultValue = "${env:COMMONSHEET_PERSON}")
  private String name;

  /** A change that a person makes now. */
  interface Deed {
    CellRecord of(Settling settling, CellRecord record) throws ReviewException;
  }

  /** Makes a change and writes it. */
  CellRecord change(Deed deed) throws CommandException {
    Settling settling = new Settling(person(), Clock.systemUTC().instant());
    try {
      return DESK.change(file, record -> deed.of(settling, record)).record();
    } catch (ReviewException | IllegalArgumentException refused) {
      throw new CommandException(ExitStatus.USAGE, refused.getMessage());
    } catch (RecordException unwritten) {
      throw new CommandException(ExitStatus.NOT_WRITTEN, unwritten.getMessage());
    }
  }

  /** Approves the record and writes it. */
  StoredRecord approve(boolean ownWork) throws CommandException {
    try {
      return DESK.approve(file, person(), ownWork, Clock.systemUTC().instant());
    } catch (ReviewException refused) {
      throw new CommandException(ExitStatus.FOUND, refused.getMessage());
    } catch (RecordException unwritten) {
      throw new CommandException(ExitStatus.NOT_WRITTEN, unwritten.getMessage());
    }
  }

  private Person person() throws CommandException {
    try {
      return new Person(name);
    } catch (IllegalArgumentException nameless) {
      throw new CommandException(ExitStatus.USAGE, nameless.getMessage());
    }
  }

  /** Tells what is left to do until the record can be approved. */
  static void tellProgress(CellRecord record, PrintWriter out) {
    Progress progress = Progress.of(record);
    List<String> obstacles = Approval.obstacles(record);
    int open = progress.openFindings().size();
    out.println(
        record.id()
            + ": "
            + record.review().state()
            + ", "
            + progress.unsettled().size()
            + " unsettled, "
            + SheetLine.count(open, "open finding")
            + (obstacles.isEmpty() && !record.review().state().equals("approved")
                ? "; ready to be approved"
                : ""));
    out.flush();
  }
}
