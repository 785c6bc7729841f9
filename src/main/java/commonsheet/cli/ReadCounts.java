package commonsheet.cli;

/**
 * What a run of {@code read} came to.
 *
 * @param sheets files that gave at least one record
 * @param records records read
 * @param pictures files without a record since all of their pages are pictures
 * @param unreadable files that gave none for another reason, and folders without files
 * @param unwritten records that could not be written
 */
record ReadCounts(int sheets, int records, int pictures, int unreadable, int unwritten) {
  static final ReadCounts NONE = new ReadCounts(0, 0, 0, 0, 0);

  ReadCounts withSheet(int itsRecords) {
    return new ReadCounts(sheets + 1, records + itsRecords, pictures, unreadable, unwritten);
  }

  ReadCounts withPicture() {
    return new ReadCounts(sheets, records, pictures + 1, unreadable, unwritten);
  }

  ReadCounts withUnreadable(int files) {
    return new ReadCounts(sheets, records, pictures, unreadable + files, unwritten);
  }

  ReadCounts withUnwritten() {
    return new ReadCounts(sheets, records, pictures, unreadable, unwritten + 1);
  }

  /**
   * The status the run ends with. A sheet of pictures is a limit that is told, not a failure, as
   * long as anything else was read.
   */
  int status() {
    return unwritten > 0 ? ExitStatus.NOT_WRITTEN : ExitStatus.of(sheets, unreadable);
  }
}
