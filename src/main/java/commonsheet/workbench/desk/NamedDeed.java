package commonsheet.workbench.desk;

/**
 * A deed with its name.
 *
 * @param what in few words, such as {@code confirm s3}
 */
record NamedDeed(String what, Deed deed) {}
