package commonsheet.quantity;

/** Whether a printed number limits its quantity to one side. */
public enum Bound {
  NONE,
  /** The number is the least: ≥, &gt;, min, "or more", 以上. */
  AT_LEAST,
  /** The number is the most: ≤, &lt;, max, "or less", 以下. */
  AT_MOST
}
