package commonsheet.compare;

/**
 * A cell of a shortlist.
 *
 * @param cell what it delivers
 * @param verdict whether it carries the current
 * @param margin its rating over what is asked, less 1: 0.2 is a fifth above, −0.1 a tenth below;
 *     null where the rating is not known or nothing is asked
 * @param reason for people: by how much it carries or fails, and by which statement
 * @param pack figures of a pack of this cell; null where no requirement was given
 */
public record Contender(
    CellFigures cell, Verdict verdict, Double margin, String reason, PackFigures pack) {}
