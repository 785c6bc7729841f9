package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * The document a record was read from; or, for a record that was typed in without one, where its
 * values were seen. A record has either the file or the place.
 *
 * @param title of the document; without one, what the values were seen on
 * @param file file name without its folder; null without a document, like {@code sha256} and {@code
 *     pages}
 * @param sha256 of the file, lower-case hexadecimal
 * @param pages number of pages
 * @param language BCP 47 tags of the languages read, such as {@code en} or {@code en,zh}
 * @param layout the layout rule file used
 * @param where the values were seen, such as the label of a pack; null where there is a document
 * @param when they were seen there, ISO 8601 day; null where there is a document
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
    Layout layout,
    String where,
    String when) {
  /** A layout rule file by its name and version. */
  public record Layout(String name, int version) {}

  /** A document. */
  public Source(
      String title,
      String document,
      String revision,
      String date,
      String file,
      String sha256,
      Integer pages,
      String language,
      Layout layout) {
    this(title, document, revision, date, file, sha256, pages, language, layout, null, null);
  }

  /** A place where values were seen that stand in no document. */
  public static Source seen(String title, String where, String when) {
    return new Source(title, null, null, null, null, null, null, null, null, where, when);
  }

  /** Whether there is a document. */
  @JsonIgnore
  public boolean isDocument() {
    return where == null;
  }

  /** The file's name, or where the values were seen and when. */
  @JsonIgnore
  public String named() {
    return isDocument() ? file : title + ", " + where + ", " + when;
  }

  /** Whether both are the very same file. */
  public boolean isSameFileAs(Source other) {
    return sha256 != null && sha256.equals(other.sha256);
  }
}
