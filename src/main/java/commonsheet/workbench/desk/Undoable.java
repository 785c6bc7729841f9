package commonsheet.workbench.desk;

/**
 * What can be undone and done again at a record.
 *
 * @param undo such as {@code confirm s3}; null for nothing, like all members
 * @param undoBy whose deed it was
 */
record Undoable(String undo, String undoBy, String redo, String redoBy) {
  static final Undoable NOTHING = new Undoable(null, null, null, null);
}
