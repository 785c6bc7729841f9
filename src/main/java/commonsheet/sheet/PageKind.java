package commonsheet.sheet;

/** What a page offers to a reader of words. */
public enum PageKind {
  /** Words, and nothing drawn that could hide more. */
  WORDS,
  /** Words, and pictures or outlines large enough to hold figures that cannot be read as words. */
  PARTLY_PICTURE,
  /** Something drawn, and no words. */
  PICTURE,
  /** Neither words nor drawing. */
  BLANK
}
