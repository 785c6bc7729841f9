package commonsheet.export;

/** What everyone who uses the figures must know; goes with every output that shows them. */
public final class Caution {
  /** One line of plain text. */
  public static final String TEXT =
      "Caution: the figures are the makers', for new cells, and no substitute for the makers'"
          + " safety instructions. Follow local codes; leave pack welding, protection and"
          + " certification to qualified people.";

  private Caution() {}
}
