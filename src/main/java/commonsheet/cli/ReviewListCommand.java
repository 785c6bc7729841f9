package commonsheet.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.record.ReadRecord;
import commonsheet.review.Overview;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists records with what is to be done in them. */
@Command(
    name = "list",
    description =
        "Lists records with their state, what nobody has settled, open findings, and what is"
            + " missing.",
    sortOptions = false)
final class ReviewListCommand implements Callable<Integer> {
  /** What to list the records by. */
  enum Order {
    /** By the names of files. */
    FILE,
    STATE,
    /** Most first. */
    UNSETTLED,
    /** Most errors first, then warnings, then notes. */
    FINDINGS;

    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** A record's file with its overview. */
  private record Row(Path file, Overview overview) {}

  @Spec private CommandSpec spec;

  @Option(
      names = "--state",
      paramLabel = "STATE",
      description = "Only records that are draft, approved or reopened.")
  private String state;

  @Option(names = "--open", description = "Only records with an open error or warning.")
  private boolean open;

  @Option(
      names = "--missing",
      paramLabel = "QUANTITY",
      description = "Only records that do not give this quantity, such as mass.")
  private String missing;

  @Option(
      names = "--sort",
      description = "file, state, unsettled or findings.",
      defaultValue = "file")
  private Order order;

  @Option(
      names = "--format",
      description = "text: a line per record. json: an array.",
      defaultValue = "text")
  private OutputFormat format;

  @Parameters(
      arity = "1..*",
      paramLabel = "FOLDER|RECORD",
      description = "Record files, or folders to search for .json files.")
  private List<Path> arguments;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    RecordFiles files = RecordFiles.read(arguments, spec.commandLine().getErr());
    List<Row> rows = new ArrayList<>();
    for (ReadRecord stored : files.records()) {
      Row row = new Row(stored.file(), Overview.of(stored.record()));
      if (isWanted(row.overview())) {
        rows.add(row);
      }
    }
    rows.sort(comparator());
    if (format == OutputFormat.JSON) {
      out.println(json(rows));
    } else {
      rows.forEach(row -> out.println(line(row)));
      out.println(SheetLine.count(rows.size(), "record"));
    }
    out.flush();
    return files.status();
  }

  private boolean isWanted(Overview overview) {
    return (state == null || overview.state().equals(state))
        && (!open || overview.errors() + overview.warnings() > 0)
        && (missing == null || overview.missing().contains(missing));
  }

  private Comparator<Row> comparator() {
    Comparator<Row> byFile = Comparator.comparing(Row::file);
    return switch (order) {
      case FILE -> byFile;
      case STATE -> Comparator.comparing((Row row) -> row.overview().state()).thenComparing(byFile);
      case UNSETTLED ->
          Comparator.comparingInt((Row row) -> -row.overview().unsettled()).thenComparing(byFile);
      case FINDINGS ->
          Comparator.comparingInt((Row row) -> -row.overview().errors())
              .thenComparingInt(row -> -row.overview().warnings())
              .thenComparingInt(row -> -row.overview().notes())
              .thenComparing(byFile);
    };
  }

  private static String line(Row row) {
    Overview overview = row.overview();
    return row.file()
        + ": "
        + overview.state()
        + ", "
        + overview.unsettled()
        + " unsettled, "
        + SheetLine.count(overview.errors(), "error")
        + ", "
        + SheetLine.count(overview.warnings(), "warning")
        + ", "
        + SheetLine.count(overview.notes(), "note")
        + (overview.missing().isEmpty() ? "" : "; no " + String.join(", ", overview.missing()));
  }

  private static String json(List<Row> rows) {
    ObjectMapper mapper = new ObjectMapper();
    ArrayNode list = mapper.createArrayNode();
    for (Row row : rows) {
      ObjectNode node = list.addObject();
      node.put("file", row.file().toString());
      node.put("id", row.overview().record().id());
      node.put("state", row.overview().state());
      node.put("unsettled", row.overview().unsettled());
      node.put("errors", row.overview().errors());
      node.put("warnings", row.overview().warnings());
      node.put("notes", row.overview().notes());
      node.set("missing", mapper.valueToTree(row.overview().missing()));
    }
    return list.toPrettyString();
  }
}
