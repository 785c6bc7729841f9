package commonsheet.cli;

/**
 * What a run of {@code read} came to.
 *
 * @param sheets files that gave at least one record
 * @param records records read
 * @param unreadable files that gave none, and folders without files
 * @param unwritten records that could not be written
 */
record ReadCounts(int sheets, int records, int unreadable, int unwritten) {
  static final ReadCounts NONE = new ReadCounts(0, 0, 0, 0);

  ReadCounts withSheet(int itsRecords) {
    return new ReadCounts(sheets + 1, records + itsRecords, unreadable, unwritten);
  }

  ReadCounts withUnreadable(int files) {
    return new ReadCounts(sheets, records, unreadable + files, unwritten);
  }

  ReadCounts withUnwritten() {
    return new ReadCounts(sheets, records, unreadable, unwritten + 1);
  }

  /** The status the run ends with. */
  int status() {
    return unwritten > 0 ? ExitStatus.NOT_WRITTEN : ExitStatus.of(sheets, unreadable);
  }
}
