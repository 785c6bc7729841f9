package commonsheet.sheet;

/**
 * A run of characters without a gap, where it stands on the page.
 *
 * @param text as printed, in Unicode; ligatures and compatibility forms (full-width digits and
 *     signs) are kept
 * @param box around the characters
 * @param size font size in points
 * @param bold whether the font calls itself bold
 * @param turn direction of reading: 0 left to right, 90 bottom to top, 180 upside down, 270 top to
 *     bottom; a slanted word has its angle, counter-clockwise in whole degrees
 * @param raised superscript (1), subscript (-1) or on the line (0), seen against its neighbours
 * @param recognised whether the word was recognised from a picture instead of written in the file
 * @param confidence 0 to 1; 1 for written words
 */
public record Word(
    String text,
    Box box,
    double size,
    boolean bold,
    int turn,
    int raised,
    boolean recognised,
    double confidence) {}
