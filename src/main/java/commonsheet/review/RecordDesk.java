package commonsheet.review;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.StoredRecord;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.UnaryOperator;

/**
 * Where record files are worked on: a change is made to the record as it was read, what follows
 * from it is computed anew, and the whole is written only if nobody has changed the file in
 * between.
 *
 * @param following what follows from a change, such as derived values and findings
 */
public record RecordDesk(UnaryOperator<CellRecord> following) {
  /** A change of a record. */
  public interface Change {
    /**
     * The record after it.
     *
     * @throws ReviewException where it cannot be made
     */
    CellRecord of(CellRecord record) throws ReviewException;
  }

  /**
   * Reads a file, changes its record and writes it.
   *
   * @return as it is now in the file
   */
  public StoredRecord change(Path file, Change change) throws RecordException, ReviewException {
    return change(RecordStore.open(file), change);
  }

  /**
   * Changes a record that was read before and writes it. A change that changes nothing writes
   * nothing.
   *
   * @return as it is now in the file
   * @throws RecordException where it was changed by somebody else meanwhile, or cannot be written
   */
  public StoredRecord change(StoredRecord before, Change change)
      throws RecordException, ReviewException {
    CellRecord after = changed(before.record(), change);
    return after.equals(before.record()) ? before : RecordStore.save(before, after);
  }

  /** A record after a change and what follows from it; nothing is written. */
  public CellRecord changed(CellRecord before, Change change) throws ReviewException {
    return following.apply(change.of(before));
  }

  /**
   * Approves a record as its file has it, after everything that follows has been computed anew.
   *
   * @param ownWork whether the person says that they approve what they prepared themselves
   * @return as it is now in the file
   * @throws ReviewException where something stands in the way
   * @throws RecordException where it was changed by somebody else meanwhile, or cannot be written
   */
  public StoredRecord approve(Path file, Person person, boolean ownWork, Instant at)
      throws RecordException, ReviewException {
    return approve(RecordStore.open(file), person, ownWork, at);
  }

  /** The same for a record that was read before. */
  public StoredRecord approve(StoredRecord before, Person person, boolean ownWork, Instant at)
      throws RecordException, ReviewException {
    CellRecord current = following.apply(before.record());
    return RecordStore.save(before, Approval.given(current, person, ownWork, at));
  }
}
