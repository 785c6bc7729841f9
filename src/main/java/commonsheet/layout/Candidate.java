package commonsheet.layout;

import commonsheet.record.Conditions;
import commonsheet.record.Method;
import commonsheet.record.Statistic;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * What one reader takes a place on the sheet to say, before anything is decided.
 *
 * @param rate the multiple of C where the sheet gives a current so; its amperes are worked out once
 *     the capacity is known
 * @param mentioned whether it was found in passing, in a sentence about something else
 * @param model the model whose column it stands in, null where the sheet describes one model
 * @param note what was added beyond the words printed, for the evidence; null where nothing was
 * @param doubts why it may be wrong
 */
record Candidate(
    String quantity,
    Statistic statistic,
    Amount amount,
    Double rate,
    Conditions conditions,
    Place place,
    boolean mentioned,
    String model,
    String note,
    List<String> doubts) {
  Candidate {
    doubts = List.copyOf(doubts);
  }

  /** A value, a range or both, in the quantity's canonical unit; null for what is not stated. */
  record Amount(Double value, Double low, Double high) {
    static final Amount UNKNOWN = new Amount(null, null, null);
  }

  /**
   * Where it stands and how it was read there.
   *
   * @param confidence of the recognised words, null where the words are the file's own
   */
  record Place(int page, Box box, String text, Method method, String rule, Double confidence) {}

  Double value() {
    return amount.value();
  }

  Double low() {
    return amount.low();
  }

  Double high() {
    return amount.high();
  }

  int page() {
    return place.page();
  }

  Box box() {
    return place.box();
  }

  String text() {
    return place.text();
  }

  Method method() {
    return place.method();
  }

  String rule() {
    return place.rule();
  }

  Double confidence() {
    return place.confidence();
  }

  Candidate doubted(String doubt) {
    if (doubts.contains(doubt)) {
      return this;
    }
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new Candidate(
        quantity, statistic, amount, rate, conditions, place, mentioned, model, note, more);
  }

  Candidate called(Statistic other) {
    return new Candidate(
        quantity, other, amount, rate, conditions, place, mentioned, model, note, doubts);
  }

  /**
   * The same claim as one of another quantity; a statistic of the one says nothing of the other.
   */
  Candidate ofQuantity(String other, Amount its) {
    return new Candidate(other, null, its, rate, conditions, place, mentioned, model, note, doubts);
  }

  Candidate with(Conditions other) {
    return new Candidate(
        quantity, statistic, amount, rate, other, place, mentioned, model, note, doubts);
  }

  Candidate withAmperes(Amount amperes) {
    return new Candidate(
        quantity, statistic, amperes, rate, conditions, place, mentioned, model, note, doubts);
  }

  Candidate asMention() {
    return new Candidate(
        quantity, statistic, amount, rate, conditions, place, true, model, note, doubts);
  }

  Candidate ofModel(String name) {
    return new Candidate(
        quantity, statistic, amount, rate, conditions, place, mentioned, name, note, doubts);
  }

  /** With conditions that a layout holds for its sheets and this place does not state. */
  Candidate withDefaults(Conditions defaults, String layout) {
    Conditions all = conditions.withMissingFrom(defaults);
    if (all.equals(conditions)) {
      return this;
    }
    String names = String.join(", ", defaults.values().keySet());
    String added = "conditions by default of layout " + layout + ": " + names;
    String whole = note == null ? added : note + "; " + added;
    return new Candidate(
        quantity, statistic, amount, rate, all, place, mentioned, model, whole, doubts);
  }
}
