package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.Statement;
import commonsheet.review.Differences;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows how two records differ. */
@Command(
    name = "differences",
    aliases = "compare-revisions",
    description = {
      "Shows how two records differ, such as those of two revisions of a sheet: - stands in the"
          + " first, + in the second.",
      "Ends with status 0 whether they differ or not."
    },
    sortOptions = false)
final class ReviewDifferencesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(names = "--all", description = "Also show what is the same, marked =.")
  private boolean all;

  @Parameters(index = "0", paramLabel = "FIRST", description = "A record file.")
  private Path first;

  @Parameters(index = "1", paramLabel = "SECOND", description = "Another one.")
  private Path second;

  private PrintWriter out;

  @Override
  public Integer call() throws CommandException {
    out = spec.commandLine().getOut();
    CellRecord one = read(first);
    CellRecord other = read(second);
    out.println("- " + first + " " + document(one));
    out.println("+ " + second + " " + document(other));
    int differing = cell(one, other) + statements(one, other) + curves(one, other);
    out.println(SheetLine.count(differing, "difference"));
    out.flush();
    return ExitStatus.DONE;
  }

  private static CellRecord read(Path file) throws CommandException {
    try {
      return RecordStore.open(file).record();
    } catch (RecordException unusable) {
      throw new CommandException(ExitStatus.NONE_READABLE, unusable.getMessage());
    }
  }

  private static String document(CellRecord record) {
    String revision = record.source().revision();
    return "(" + record.source().named() + (revision == null ? "" : ", revision " + revision) + ")";
  }

  private int cell(CellRecord one, CellRecord other) {
    List<Differences.MemberPair> pairs = Differences.ofCell(one, other);
    for (Differences.MemberPair pair : pairs) {
      line("-", pair.first() == null ? null : pair.member().label() + " " + pair.first());
      line("+", pair.second() == null ? null : pair.member().label() + " " + pair.second());
    }
    return pairs.size();
  }

  private int statements(CellRecord one, CellRecord other) {
    int differing = 0;
    for (Differences.Pair pair : Differences.ofStatements(one, other)) {
      if (!pair.isSame()) {
        differing++;
        line("-", told(pair.first()));
        line("+", told(pair.second()));
      } else if (all) {
        line("=", told(pair.first()));
      }
    }
    return differing;
  }

  private int curves(CellRecord one, CellRecord other) {
    List<Curve> gone = Differences.onlyIn(one, other);
    List<Curve> come = Differences.onlyIn(other, one);
    gone.forEach(curve -> line("-", CurveLine.of(curve)));
    come.forEach(curve -> line("+", CurveLine.of(curve)));
    return gone.size() + come.size();
  }

  private static String told(Statement statement) {
    return statement == null ? null : statement.id() + " " + StatementLine.of(statement);
  }

  private void line(String mark, String text) {
    if (text != null) {
      out.println(mark + " " + text);
    }
  }
}
