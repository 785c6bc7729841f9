package commonsheet.sheet;

/**
 * Limits of reading a sheet. They guard against files made or broken so that a reader would run out
 * of time or memory; no honest datasheet comes near them.
 *
 * @param maximumPages pages per file; specifications have 1 to 60 pages, a whole catalogue is no
 *     sheet of a cell
 * @param maximumGlyphs characters per page; a page of the smallest readable print holds some 20 000
 * @param maximumPathPieces lines and curves per page; detailed assembly drawings and maps stay
 *     below a million
 * @param maximumStreamBytes bytes all streams of a file may take together once unpacked, held in a
 *     temporary file beyond 16 MiB; large datasheets unpack to some 20 MB without their pictures,
 *     which are not unpacked here
 * @param secondsPerPage time one page's content may take; ordinary pages take less than 0.1 s
 */
public record SheetSettings(
    int maximumPages,
    int maximumGlyphs,
    int maximumPathPieces,
    long maximumStreamBytes,
    int secondsPerPage) {

  /**
   * Limits that serve every sheet: 300 pages, 100 000 characters, 2 million path pieces, 256 MiB,
   * 20 s.
   */
  public static SheetSettings defaults() {
    return new SheetSettings(300, 100_000, 2_000_000, 256L << 20, 20);
  }
}
