package commonsheet.export.report;

import commonsheet.export.Printed;
import java.util.List;
import java.util.function.Function;

/** What is said of a cell in words, by column; an absent text is empty. */
final class CellTexts {
  /**
   * One of these columns.
   *
   * @param name in files
   * @param title for people
   * @param description in a sentence
   */
  record Column(
      String name, String title, String description, Function<ReportedCell, String> words) {
    Function<ReportedCell, String> text() {
      return words.andThen(Printed::clean);
    }
  }

  static final List<Column> ALL =
      List.of(
          new Column("maker", "Maker", "As the sheet prints it.", c -> c.cell().maker()),
          new Column(
              "model",
              "Model",
              "The maker's name for the cell, as printed.",
              c -> c.cell().model()),
          new Column(
              "designation",
              "Designation",
              "In the form of IEC 61960-3, where the sheet gives it.",
              c -> c.cell().designation()),
          new Column("size_code", "Size code", "Such as 18650.", c -> c.cell().sizeCode()),
          new Column(
              "chemistry", "Chemistry", "As the sheet prints it.", c -> c.cell().chemistry()),
          new Column(
              "form", "Form", "cylindrical, prismatic, pouch or coin.", c -> c.cell().form()),
          new Column(
              "verdict",
              "Verdict",
              "Whether the cell carries the current asked of it.",
              c -> c.contender().verdict().label()),
          new Column(
              "reason",
              "Reason",
              "By how much it carries or fails, and by which statement.",
              c -> c.contender().reason()),
          new Column(
              "state",
              "State of approval",
              "draft, or approved by a person.",
              c -> SheetUsed.review(c).state()),
          new Column(
              "approved_by",
              "Approved by",
              "Who approved the record.",
              c -> SheetUsed.review(c).approvedBy()),
          new Column(
              "approved_at",
              "Approved at",
              "When the record was approved, ISO 8601.",
              c -> SheetUsed.review(c).approvedAt()),
          new Column(
              "source_file", "Sheet", "File name of the sheet.", c -> SheetUsed.of(c).file()),
          new Column(
              "source_title", "Title of the sheet", "As printed.", c -> SheetUsed.of(c).title()),
          new Column(
              "source_document",
              "Document number",
              "As the sheet prints it.",
              c -> SheetUsed.of(c).document()),
          new Column(
              "source_revision",
              "Revision",
              "Revision of the sheet, as printed.",
              c -> SheetUsed.of(c).revision()),
          new Column(
              "source_date", "Date of the sheet", "As printed.", c -> SheetUsed.of(c).date()),
          new Column(
              "source_sha256",
              "SHA-256 of the sheet",
              "Of the file, lower-case hexadecimal.",
              c -> SheetUsed.of(c).sha256()),
          new Column(
              "source_pages",
              "Pages",
              "Pages of the sheet on which the figures stand, separated by semicolons.",
              c -> SheetUsed.of(c).pageList()));

  private CellTexts() {}
}
