package commonsheet.workbench.desk;

import commonsheet.record.CellRecord;
import commonsheet.review.CellMember;
import commonsheet.review.ReviewException;
import commonsheet.review.Settling;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import java.util.List;

/** A deed as a page gives it. */
final class GivenDeed {
  /** How many parts are named in what would be undone. */
  private static final int NAMED = 3;

  private GivenDeed() {}

  /**
   * Understands it.
   *
   * @throws Refusal where it is none
   */
  static NamedDeed of(Given given) {
    if (given == null) {
      throw new Refusal(Refusal.Kind.UNUSABLE, "The request names no deed; load the page anew.");
    }
    String kind = given.required("do");
    return switch (kind) {
      case "confirm" ->
          ofParts(kind, given, (settling, record, ids) -> settling.confirmed(record, ids));
      case "reject" -> {
        String reason = given.text("reason");
        yield ofParts(
            kind, given, (settling, record, ids) -> settling.rejected(record, ids, reason));
      }
      case "return" -> {
        String remark = said(given, "remark", "say what is to be looked at again");
        yield ofParts(
            kind, given, (settling, record, ids) -> settling.returned(record, ids, remark));
      }
      case "prepared" -> new NamedDeed(kind, (settling, record) -> settling.prepared(record));
      case "correct" -> GivenCorrection.deed(given);
      case "add" -> GivenStatement.deed(given);
      case "accept" -> accept(given);
      case "cell" -> cell(given);
      default ->
          throw new Refusal(
              Refusal.Kind.UNUSABLE, "\"" + kind + "\" is no deed; load the page anew.");
    };
  }

  /** A deed at several statements and curves. */
  private interface PartsDeed {
    CellRecord of(Settling settling, CellRecord record, List<String> ids) throws ReviewException;
  }

  private static NamedDeed ofParts(String kind, Given given, PartsDeed deed) {
    List<String> ids = given.texts("ids").stream().distinct().toList();
    if (ids.isEmpty()) {
      throw new Refusal(Refusal.Kind.UNUSABLE, "Choose a value first.");
    }
    String named = String.join(", ", ids.subList(0, Math.min(NAMED, ids.size())));
    int more = ids.size() - NAMED;
    return new NamedDeed(
        kind + " " + named + (more > 0 ? " and " + more + " more" : ""),
        (settling, record) -> {
          for (String id : ids) {
            exists(id, record);
          }
          return deed.of(settling, record, ids);
        });
  }

  /** Refuses ids that the record does not have. */
  static void exists(String id, CellRecord record) throws ReviewException {
    if (record.statement(id) == null && record.curve(id) == null) {
      throw new ReviewException("the record has no \"" + id + "\"; load it anew");
    }
  }

  private static NamedDeed accept(Given given) {
    String rule = given.required("rule");
    List<String> about = given.texts("about");
    String reason = said(given, "reason", "say why it may stand");
    return new NamedDeed(
        "accept " + rule,
        (settling, record) -> {
          boolean open =
              record.findings().stream()
                  .anyMatch(
                      finding ->
                          finding.isOpen()
                              && finding.rule().equals(rule)
                              && finding.about().containsAll(about));
          if (!open) {
            throw new ReviewException("the record has no such finding that is open; load it anew");
          }
          return settling.accepted(record, rule, about, reason);
        });
  }

  private static NamedDeed cell(Given given) {
    CellMember member = member(given.required("member"));
    String text = given.text("text");
    String tidy = text == null || text.isBlank() ? null : text.strip();
    return new NamedDeed(
        "correct " + member.label(),
        (settling, record) -> settling.corrected(record, member, tidy));
  }

  private static CellMember member(String name) {
    for (CellMember member : CellMember.values()) {
      if (member.member().equals(name) || member.label().equals(name)) {
        return member;
      }
    }
    throw new Refusal(Refusal.Kind.UNUSABLE, "\"" + name + "\" is no member of a cell.");
  }

  private static String said(Given given, String member, String what) {
    String text = given.text(member);
    if (text == null || text.isBlank()) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE, Character.toUpperCase(what.charAt(0)) + what.substring(1) + ".");
    }
    return text.strip();
  }
}
