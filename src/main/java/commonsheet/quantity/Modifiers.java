package commonsheet.quantity;

/**
 * What the words around a number say about it.
 *
 * @param between whether "between" announces a pair of numbers
 * @param end the place after the words
 */
record Modifiers(Bound bound, Qualifier qualifier, boolean approximate, boolean between, int end) {
  static Modifiers none(int end) {
    return new Modifiers(Bound.NONE, null, false, false, end);
  }

  boolean areEmpty() {
    return bound == Bound.NONE && qualifier == null && !approximate && !between;
  }

  /** These with one more word; the word nearest to the number decides. */
  Modifiers and(Words.Meaning word, int newEnd) {
    return new Modifiers(
        word.bound() == Bound.NONE ? bound : word.bound(),
        word.qualifier() == null ? qualifier : word.qualifier(),
        approximate || word.approximate(),
        between || word.between(),
        newEnd);
  }
}
