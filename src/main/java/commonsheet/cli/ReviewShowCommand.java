package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.ReviewStep;
import commonsheet.record.Statement;
import commonsheet.review.CellMember;
import commonsheet.review.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what a record says and what is to be settled in it. */
@Command(
    name = "show",
    description =
        "Shows every value with its place on the sheet, the words as printed, its standing, doubts"
            + " and findings, and what people said.",
    sortOptions = false)
final class ReviewShowCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(names = "--unsettled", description = "Only what nobody has settled yet.")
  private boolean unsettled;

  @Option(names = "--ids", description = "Only the ids, on one line, for scripts.")
  private boolean onlyIds;

  @Parameters(paramLabel = "RECORD", description = "The record file.")
  private Path file;

  private PrintWriter out;

  @Override
  public Integer call() throws CommandException {
    out = spec.commandLine().getOut();
    CellRecord record;
    try {
      record = RecordStore.open(file).record();
    } catch (RecordException unusable) {
      throw new CommandException(ExitStatus.NONE_READABLE, unusable.getMessage());
    }
    List<String> open = Progress.of(record).unsettled();
    List<String> ids =
        Stream.concat(
                record.statements().stream().map(Statement::id),
                record.curves().stream().map(Curve::id))
            .filter(id -> !unsettled || open.contains(id))
            .toList();
    if (onlyIds) {
      out.println(String.join(" ", ids));
    } else {
      show(record, ids);
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private void show(CellRecord record, List<String> ids) {
    for (CellMember member : CellMember.values()) {
      String text = member.of(record.cell());
      if (text != null && !unsettled) {
        out.println(member.label() + " " + text);
      }
    }
    for (String id : ids) {
      out.println(PartLine.of(record, id));
      doubts(record, id).forEach(doubt -> out.println("    ? " + doubt));
      original(record, id);
      record.findings().stream()
          .filter(finding -> finding.about().contains(id))
          .forEach(this::show);
    }
    record.findings().stream().filter(f -> f.about().isEmpty()).forEach(this::show);
    if (!unsettled) {
      record.review().steps().forEach(this::show);
    }
    ReviewWork.tellProgress(record, out);
  }

  private static List<String> doubts(CellRecord record, String id) {
    Statement statement = record.statement(id);
    return statement == null ? record.curve(id).doubts() : statement.doubts();
  }

  private void original(CellRecord record, String id) {
    Statement statement = record.statement(id);
    if (statement != null && statement.original() != null) {
      out.println("    was " + StatementLine.original(statement));
    }
    Curve curve = record.curve(id);
    if (curve != null && curve.original() != null) {
      out.println(
          "    was "
              + (curve.original().label() == null ? "" : "\"" + curve.original().label() + "\" ")
              + StatementLine.conditions(curve.original().conditions()).strip());
    }
  }

  private void show(Finding finding) {
    out.println("    " + FindingLine.of(finding));
  }

  private void show(ReviewStep step) {
    out.println(
        Stream.of(
                step.at(),
                step.by(),
                step.step().label(),
                String.join(" ", step.about()),
                step.rule(),
                step.remark())
            .filter(part -> part != null && !part.isEmpty())
            .collect(Collectors.joining("  ")));
  }
}
