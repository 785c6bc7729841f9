package commonsheet.record;

import java.nio.file.Path;

/**
 * A record as it was found in its file.
 *
 * @param file where it stands
 * @param version SHA-256 of the file's bytes, by which a change in between is noticed
 */
public record StoredRecord(Path file, CellRecord record, String version) {}
