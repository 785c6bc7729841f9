package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.review.CellMember;
import commonsheet.review.Correction;
import commonsheet.review.Ids;
import commonsheet.review.ReviewException;
import commonsheet.review.Settling;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts what the sheet says in place of what was read. */
@Command(
    name = "correct",
    description = {
      "Puts what the sheet says in place of what was read, which is kept beside it.",
      "ID is a statement, a curve (its conditions and label), or a member of the cell such as"
          + " cell.chemistry (its --text)."
    },
    sortOptions = false)
final class ReviewCorrectCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Parameters(index = "1", paramLabel = "ID", description = "What you correct.")
  private String id;

  @Option(names = "--value", paramLabel = "NUMBER", description = "In the unit of the record.")
  private Double value;

  @Option(
      names = "--range",
      paramLabel = "LOW..HIGH",
      description = "Bounds in the unit of the record, such as -20..60; none takes them away.")
  private String range;

  @Option(
      names = "--statistic",
      paramLabel = "NAME",
      description = "nominal, typical, rated, minimum, maximum or standard; none for none.")
  private String statistic;

  @Option(
      names = "--condition",
      paramLabel = "NAME=NUMBER",
      description = "A condition in its unit, such as temperature=25; NAME=none takes it away.")
  private List<String> conditions = List.of();

  @Option(names = "--label", paramLabel = "TEXT", description = "Label of a curve.")
  private String label;

  @Option(names = "--text", paramLabel = "TEXT", description = "Text of a member of the cell.")
  private String text;

  @Option(names = "--remark", paramLabel = "TEXT", description = "Why.")
  private String remark;

  @Override
  public Integer call() throws CommandException {
    PrintWriter out = spec.commandLine().getOut();
    CellRecord record = work.change(this::corrected);
    out.println(CellMember.isMeant(id) ? id + " " + text : PartLine.of(record, id));
    ReviewWork.tellProgress(record, out);
    return ExitStatus.DONE;
  }

  private CellRecord corrected(Settling settling, CellRecord before) throws ReviewException {
    if (CellMember.isMeant(id)) {
      CellMember member = CellMember.named(id);
      if (text == null || text.isBlank()) {
        throw new ReviewException("say what the sheet says by --text TEXT");
      }
      return settling.corrected(before, member, text.strip());
    }
    String one = Ids.of(List.of(id), before).named().stream().findFirst().orElse("");
    if (!one.equals(id)) {
      throw new ReviewException("correct one value at a time, such as s3");
    }
    Correction correction = correction();
    if (correction.isEmpty()) {
      throw new ReviewException(
          "say what the sheet says by --value, --range, --statistic, --condition or --label");
    }
    return settling.corrected(before, id, correction, remark);
  }

  private Correction correction() throws ReviewException {
    return new Correction(
        value,
        Typed.bounds(range),
        Typed.statistic(statistic),
        Typed.isNone(statistic),
        Typed.conditions(conditions),
        label);
  }
}
