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
 * @param confidence of the recognised words, null where the words are the file's own
 */
record Candidate(
    String quantity,
    Statistic statistic,
    Double value,
    Double low,
    Double high,
    Double rate,
    Conditions conditions,
    int page,
    Box box,
    String text,
    Method method,
    String rule,
    Double confidence,
    boolean mentioned,
    String model,
    String note,
    List<String> doubts) {
  Candidate {
    doubts = List.copyOf(doubts);
  }

  Candidate doubted(String doubt) {
    if (doubts.contains(doubt)) {
      return this;
    }
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new Candidate(
        quantity,
        statistic,
        value,
        low,
        high,
        rate,
        conditions,
        page,
        box,
        text,
        method,
        rule,
        confidence,
        mentioned,
        model,
        note,
        more);
  }

  Candidate called(Statistic other) {
    return new Candidate(
        quantity,
        other,
        value,
        low,
        high,
        rate,
        conditions,
        page,
        box,
        text,
        method,
        rule,
        confidence,
        mentioned,
        model,
        note,
        doubts);
  }

  Candidate with(Conditions other) {
    return new Candidate(
        quantity,
        statistic,
        value,
        low,
        high,
        rate,
        other,
        page,
        box,
        text,
        method,
        rule,
        confidence,
        mentioned,
        model,
        note,
        doubts);
  }

  Candidate withAmperes(double amperes, Double lowAmperes, Double highAmperes) {
    return new Candidate(
        quantity,
        statistic,
        amperes,
        lowAmperes,
        highAmperes,
        rate,
        conditions,
        page,
        box,
        text,
        method,
        rule,
        confidence,
        mentioned,
        model,
        note,
        doubts);
  }

  Candidate asMention() {
    return new Candidate(
        quantity,
        statistic,
        value,
        low,
        high,
        rate,
        conditions,
        page,
        box,
        text,
        method,
        rule,
        confidence,
        true,
        model,
        note,
        doubts);
  }

  Candidate ofModel(String name) {
    return new Candidate(
        quantity,
        statistic,
        value,
        low,
        high,
        rate,
        conditions,
        page,
        box,
        text,
        method,
        rule,
        confidence,
        mentioned,
        name,
        note,
        doubts);
  }

  /** With conditions that a layout holds for its sheets and this place does not state. */
  Candidate withDefaults(Conditions defaults, String layout) {
    Conditions all = conditions.withMissingFrom(defaults);
    if (all.equals(conditions)) {
      return this;
    }
    String added =
        "conditions by default of layout "
            + layout
            + ": "
            + String.join(", ", defaults.values().keySet());
    return new Candidate(
        quantity,
        statistic,
        value,
        low,
        high,
        rate,
        all,
        page,
        box,
        text,
        method,
        rule,
        confidence,
        mentioned,
        model,
        note == null ? added : note + "; " + added,
        doubts);
  }
}
