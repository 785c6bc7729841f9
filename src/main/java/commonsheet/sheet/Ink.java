package commonsheet.sheet;

import java.util.List;

/**
 * What a page's content draws, in the page's own coordinates.
 *
 * @param glyphs characters in the order drawn
 * @param strokes straight lines along an axis, thin as a rule or a border: the longer side is the
 *     line
 * @param fills coloured rectangles too thick to be a line
 * @param curves boxes of slanted and curved strokes, as charts and drawings have them
 * @param images boxes of the pictures drawn
 * @param outlines boxes of small filled shapes, as letters turned into outlines are
 */
record Ink(
    List<Glyph> glyphs,
    List<Box> strokes,
    List<Box> fills,
    List<Box> curves,
    List<Box> images,
    List<Box> outlines) {}
