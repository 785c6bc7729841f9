package commonsheet.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.check.BetweenFinding;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;

/** What {@code check} prints: a line per finding, or all findings as JSON. */
final class CheckReport {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final PrintWriter out;
  private final OutputFormat format;
  private final ArrayNode all = MAPPER.createArrayNode();
  private int records;
  private int open;
  private int accepted;
  private boolean openError;

  CheckReport(PrintWriter out, OutputFormat format) {
    this.out = out;
    this.format = format;
  }

  void record(Path file, CellRecord record) {
    records++;
    for (Finding finding : record.findings()) {
      count(finding);
      if (format == OutputFormat.JSON) {
        add(file.toString(), finding);
      } else {
        out.println(file + ": " + FindingLine.of(finding));
      }
    }
  }

  /** A finding between two records. */
  void between(BetweenFinding finding) {
    open++;
    if (format == OutputFormat.JSON) {
      ObjectNode node = all.addObject();
      node.set("records", MAPPER.valueToTree(finding.records()));
      node.put("rule", finding.rule());
      node.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
      node.set("about", MAPPER.valueToTree(finding.about()));
      node.put("message", finding.message());
      node.put("source", finding.source());
    } else {
      out.println(
          String.join(" and ", finding.records())
              + ": "
              + finding.severity().name().toLowerCase(Locale.ROOT)
              + " "
              + finding.rule()
              + (finding.about().isEmpty() ? "" : " (" + String.join(", ", finding.about()) + ")")
              + ": "
              + finding.message());
    }
  }

  private void count(Finding finding) {
    open += finding.isOpen() ? 1 : 0;
    accepted += finding.isOpen() ? 0 : 1;
    openError |= CheckCommand.isOpenError(finding);
  }

  private void add(String file, Finding finding) {
    ObjectNode node = all.addObject();
    node.put("record", file);
    node.put("rule", finding.rule());
    node.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    node.set("about", MAPPER.valueToTree(finding.about()));
    node.put("message", finding.message());
    node.put("source", finding.source());
    if (!finding.isOpen()) {
      node.set("accepted", MAPPER.valueToTree(finding.accepted()));
    }
  }

  void end() {
    if (format == OutputFormat.JSON) {
      out.println(all.toPrettyString());
    } else {
      out.println(
          SheetLine.count(records, "record")
              + ", "
              + SheetLine.count(open, "open finding")
              + (accepted == 0 ? "" : ", " + accepted + " accepted"));
    }
    out.flush();
  }

  boolean hasOpenError() {
    return openError;
  }
}
