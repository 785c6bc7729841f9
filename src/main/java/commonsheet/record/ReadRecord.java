package commonsheet.record;

/**
 * What became of one of many record files.
 *
 * @param stored the record with its version; null where it cannot be read
 * @param problem why it cannot be read; null where it can
 */
public record ReadRecord(StoredRecord stored, RecordException problem) {}
