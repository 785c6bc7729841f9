package commonsheet.sheet;

/** A piece of a line without a wide gap, its box and font size at hand. */
record Fragment(Line line, Box box, double size) {
  static Fragment of(Line line) {
    return new Fragment(line, line.box(), line.words().get(0).size());
  }
}
