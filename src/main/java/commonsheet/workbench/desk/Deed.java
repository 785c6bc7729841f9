package commonsheet.workbench.desk;

import commonsheet.record.CellRecord;
import commonsheet.review.ReviewException;
import commonsheet.review.Settling;

/** Something that a person does with a record. */
@FunctionalInterface
public interface Deed {
  /**
   * The record after it.
   *
   * @param settling with the person and the time
   * @throws ReviewException where it cannot be done; its sentence is shown to the person
   */
  CellRecord of(Settling settling, CellRecord record) throws ReviewException;
}
