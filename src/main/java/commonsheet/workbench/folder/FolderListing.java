package commonsheet.workbench.folder;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.review.Overview;
import java.util.List;

/**
 * What is in the folder.
 *
 * @param folder where it is
 * @param records by file name
 * @param sheets those in all folders, whether or not they have records
 * @param problems files that look like records and cannot be read, with a sentence each
 */
record FolderListing(
    String folder, List<Row> records, List<SheetRow> sheets, List<Problem> problems) {
  /**
   * A record in short; see {@link Overview}.
   *
   * @param sheet the name of the sheet's file, or what the record says it was taken from
   * @param missing labels of quantities that a comparison needs and the record does not give
   */
  record Row(
      String file,
      String id,
      String maker,
      String model,
      String form,
      String sizeCode,
      String sheet,
      String state,
      int statements,
      int curves,
      int unsettled,
      int errors,
      int warnings,
      int notes,
      List<String> missing) {
    static Row of(String file, Overview overview) {
      CellRecord record = overview.record();
      QuantityCatalogue quantities = QuantityCatalogue.standard();
      return new Row(
          file,
          record.id(),
          record.cell().maker(),
          record.cell().model(),
          record.cell().form(),
          record.cell().sizeCode(),
          record.source().named(),
          overview.state(),
          record.statements().size(),
          record.curves().size(),
          overview.unsettled(),
          overview.errors(),
          overview.warnings(),
          overview.notes(),
          overview.missing().stream().map(name -> quantities.get(name).label()).toList());
    }
  }

  /**
   * A sheet.
   *
   * @param sheet what requests call it
   * @param records the files of the records that name it as their source
   */
  record SheetRow(String sheet, String file, List<String> records) {}

  /** A file that cannot be read as a record. */
  record Problem(String file, String sentence) {}
}
