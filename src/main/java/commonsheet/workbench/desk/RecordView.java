package commonsheet.workbench.desk;

import com.fasterxml.jackson.annotation.JsonInclude;
import commonsheet.record.Acceptance;
import commonsheet.record.CellRecord;
import commonsheet.record.ReviewStep;
import java.util.List;

/**
 * A record as its page shows it.
 *
 * @param version of its file; a change names it, so that nobody changes what they have not seen
 * @param parts its statements and curves in the order of the sheet, derived ones last
 * @param sheet null for a record that was typed in and has none
 * @param undo what would be undone, such as {@code confirm s3}; null for nothing, like {@code redo}
 * @param undoBy whose deed that was: only they can undo it
 */
@JsonInclude(JsonInclude.Include.ALWAYS)
public record RecordView(
    String file,
    String version,
    String state,
    CellRecord record,
    List<Part> parts,
    List<Member> cell,
    List<Found> findings,
    Stage progress,
    List<ReviewStep> steps,
    SheetView sheet,
    String undo,
    String undoBy,
    String redo,
    String redoBy) {
  /**
   * A statement or curve in words.
   *
   * @param kind statement or curve
   * @param value as the trade prints it, such as {@code 3.35 Ah}
   * @param typed what an edit field begins with; typed as it is, it changes nothing
   * @param waitsFor what has to be settled before this follows from it
   * @param original what was read before a person corrected it, or null
   * @param words as printed, or null
   * @param note what was done beyond copying the words, or null
   * @param trace the course of a curve, x and y in points of the page; null for what has none
   * @param findings their places in the list of findings
   */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  public record Part(
      String id,
      String kind,
      String quantity,
      String name,
      String statistic,
      String value,
      String typed,
      String conditions,
      String standing,
      boolean settled,
      boolean derived,
      List<String> waitsFor,
      List<String> doubts,
      String method,
      String original,
      String words,
      String note,
      Place place,
      List<List<Double>> trace,
      List<Integer> findings) {}

  /**
   * A place on the sheet.
   *
   * @param box x, y, width, height in points from the top left of the page
   */
  public record Place(int page, List<Double> box) {}

  /**
   * A member of the cell.
   *
   * @param text null where the sheet does not say it
   */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  public record Member(String member, String label, String text, String words, Place place) {}

  /** A finding with its place in the list. */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  public record Found(
      int index,
      String rule,
      String severity,
      List<String> about,
      String message,
      String source,
      boolean open,
      Acceptance accepted) {}

  /**
   * How far the record is on its way to an approval.
   *
   * @param total how many parts a person has to settle; what follows from others is not counted
   * @param obstacles what stands in the way, one sentence each
   * @param ownWork who has worked on it, so that approving it is approving their own
   */
  public record Stage(
      int settled,
      int total,
      List<String> unsettled,
      List<String> obstacles,
      List<String> ownWork) {}

  /**
   * The sheet that the record was read from.
   *
   * @param reason why it was not found, or null
   * @param pages empty where it was not found
   */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  public record SheetView(String file, boolean found, String reason, List<PageSize> pages) {}

  /** Size of a page in points as displayed. */
  public record PageSize(int page, double width, double height) {}
}
