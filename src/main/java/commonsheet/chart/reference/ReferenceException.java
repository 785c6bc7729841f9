package commonsheet.chart.reference;

/** Marks that make no scale. The message is a sentence: what is wrong and what to give. */
public final class ReferenceException extends Exception {
  private static final long serialVersionUID = 1;

  ReferenceException(String sentence) {
    super(sentence);
  }
}
