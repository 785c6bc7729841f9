package commonsheet.sheet;

import java.util.List;

/**
 * A datasheet as evidence.
 *
 * @param file file name without its folder
 * @param sha256 of the file, lower-case hexadecimal
 * @param title the PDF's own title, or null
 */
public record Sheet(String file, String sha256, String title, List<Page> pages) {
  public Sheet {
    pages = List.copyOf(pages);
  }
}
