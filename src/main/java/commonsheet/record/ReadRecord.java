package commonsheet.record;

import java.nio.file.Path;

/**
 * What became of one of many record files.
 *
 * @param record null where the file cannot be read as one
 * @param problem why it cannot; null where it can
 */
public record ReadRecord(Path file, CellRecord record, RecordException problem) {}
