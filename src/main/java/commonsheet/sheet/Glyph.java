package commonsheet.sheet;

/**
 * A character as drawn, in the page's own coordinates (points, y upwards) until a {@link Frame}
 * puts it upright.
 *
 * @param text in Unicode; a single space for a space, U+FFFD where the file does not say which
 *     character it is
 * @param x of its origin on the base line
 * @param y of its origin on the base line
 * @param advanceX how far it moves the pen along x, letter spacing not included
 * @param advanceY how far it moves the pen along y
 * @param spacing letter spacing set for its run, in points along the advance
 * @param size of the font in points
 * @param bold whether font, stroke or double print make it bold
 * @param light how light its colour is, 0 black to 1 white
 * @param hidden whether it is drawn without ink, as text recognised from a picture is
 */
record Glyph(
    String text,
    double x,
    double y,
    double advanceX,
    double advanceY,
    double spacing,
    double size,
    boolean bold,
    double light,
    boolean hidden) {

  boolean isSpace() {
    return text.equals(" ");
  }
}
