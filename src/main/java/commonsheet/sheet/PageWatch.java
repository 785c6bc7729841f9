package commonsheet.sheet;

/** Is told how far the reading of a sheet has come, on the thread that reads. */
@FunctionalInterface
public interface PageWatch {
  /**
   * The words of a page are about to be recognised, which takes seconds.
   *
   * @param file the file's name
   * @param page from 1
   * @param pages of the file
   */
  void recognising(String file, int page, int pages);
}
