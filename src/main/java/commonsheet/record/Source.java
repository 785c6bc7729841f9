package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * The document a record was read from.
 *
 * @param file file name without its folder
 * @param sha256 of the file, lower-case hexadecimal
 * @param pages number of pages
 * @param language BCP 47 tags of the languages read, such as {@code en} or {@code en,zh}
 * @param layout the layout rule file used
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Source(
    String title,
    String document,
    String revision,
    String date,
    String file,
    String sha256,
    Integer pages,
    String language,
    Layout layout) {
  /** A layout rule file by its name and version. */
  public record Layout(String name, int version) {}
}
