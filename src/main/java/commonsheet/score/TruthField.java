package commonsheet.score;

/**
 * One thing the sheet says about which cell it describes.
 *
 * @param name such as {@code cell.maker}
 * @param expected the text, as printed
 * @param page page of the sheet, from 1
 * @param text the words on the sheet around it
 */
public record TruthField(String name, String expected, Integer page, String text) {}
