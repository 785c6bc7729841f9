package commonsheet.layout;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.record.WordSource;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Decides what stands in the record. The only place that gives a value its standing: the same value
 * from two places becomes one statement, a contradiction, an implausible value or a reader's doubt
 * makes it unsure.
 */
final class Reconciler {
  /** Two values nearer than this share are the same. */
  private static final double SAME = 0.001;

  /**
   * A current in amperes and its multiple of C, both printed, agree within this share; makers
   * round.
   */
  private static final double RATE_AGREES = 0.06;

  /** Recognised words below this confidence make a value unsure. */
  static final double CONFIDENT = 0.9;

  private static final List<Statistic> REFERENCE_ORDER =
      List.of(Statistic.NOMINAL, Statistic.RATED, Statistic.TYPICAL, Statistic.STANDARD);

  private final QuantityCatalogue quantities;

  Reconciler(QuantityCatalogue quantities) {
    this.quantities = quantities;
  }

  List<Statement> decide(List<Candidate> candidates) {
    Optional<Candidate> reference = reference(candidates);
    List<Candidate> resolved = new ArrayList<>();
    for (Candidate c : candidates) {
      resolve(c, reference, candidates)
          .map(this::plausible)
          .filter(p -> p.doubts().size() == c.doubts().size() || !p.mentioned())
          .ifPresent(resolved::add);
    }
    List<Candidate> said =
        merge(resolved.stream().filter(c -> !c.mentioned()).toList(), series(resolved));
    said.addAll(worthMentioning(resolved.stream().filter(Candidate::mentioned).toList(), said));
    said = contradictions(said);
    said.sort(
        Comparator.comparingInt(Candidate::page)
            .thenComparingDouble(c -> c.box() == null ? 0 : c.box().y()));
    List<Statement> statements = new ArrayList<>();
    for (Candidate c : said) {
      statements.add(statement("s" + (statements.size() + 1), c, reference));
    }
    return statements;
  }

  // ---- currents given as multiples of C ----

  /**
   * The capacity that C stands for: the nominal or rated one, else the typical, else whichever is
   * given.
   */
  private static Optional<Candidate> reference(List<Candidate> candidates) {
    List<Candidate> capacities =
        candidates.stream()
            .filter(c -> c.quantity().equals("capacity") && c.value() != null && !c.mentioned())
            .toList();
    for (Statistic statistic : REFERENCE_ORDER) {
      Optional<Candidate> found =
          capacities.stream().filter(c -> c.statistic() == statistic).findFirst();
      if (found.isPresent()) {
        return found;
      }
    }
    Optional<Candidate> plain = capacities.stream().filter(c -> c.statistic() == null).findFirst();
    return plain.isPresent() ? plain : capacities.stream().findFirst();
  }

  private static Optional<Candidate> resolve(
      Candidate c, Optional<Candidate> reference, List<Candidate> all) {
    if (c.rate() != null) {
      return reference.map(
          r -> c.withAmperes(new Candidate.Amount(c.rate() * r.value(), null, null)));
    }
    if (!c.quantity().endsWith("Current") || c.value() == null) {
      return Optional.of(c);
    }
    String name = isDischarge(c) ? Conditions.DISCHARGE_RATE : Conditions.CHARGE_RATE;
    Double rate = c.conditions().get(name);
    if (rate == null || agreesWithAny(c.value(), rate, all)) {
      return Optional.of(c);
    }
    if (c.quantity().equals("chargeCutoffCurrent")) {
      return Optional.of(c); // the rate is that of the charge, not of its end
    }
    return Optional.of(
        c.doubted(
            String.format(
                Locale.ROOT,
                "%s A and %s C do not go together with any capacity on the sheet",
                shown(c.value()),
                shown(rate))));
  }

  private static boolean agreesWithAny(double amperes, double rate, List<Candidate> all) {
    List<Candidate> capacities =
        all.stream().filter(c -> c.quantity().equals("capacity") && c.value() != null).toList();
    return capacities.isEmpty()
        || capacities.stream()
            .anyMatch(c -> Math.abs(rate * c.value() - amperes) <= RATE_AGREES * amperes);
  }

  private Candidate plausible(Candidate c) {
    QuantityKind kind = quantities.get(c.quantity());
    if (c.low() != null && c.high() != null && c.low() > c.high()) {
      return c.doubted(
          "its lower end "
              + shown(c.low())
              + " is above its upper end "
              + shown(c.high())
              + ": a sign may have been lost");
    }
    for (Double number : new Double[] {c.value(), c.low(), c.high()}) {
      if (number != null && (number < kind.plausibleLow() || number > kind.plausibleHigh())) {
        return c.doubted(
            shown(number)
                + " "
                + kind.unit()
                + " is outside what a lithium-ion cell can have ("
                + kind.plausibleSource()
                + ")");
      }
    }
    return c;
  }

  // ---- the same thing said twice ----

  /**
   * Capacities by rate down a page, three and more: each stands by itself, also the one that
   * repeats the rated capacity.
   */
  private static Set<Candidate> series(List<Candidate> candidates) {
    Map<String, List<Candidate>> groups = new LinkedHashMap<>();
    for (Candidate c : candidates) {
      if (c.quantity().equals("capacity")
          && c.conditions().get(Conditions.CUTOFF_VOLTAGE) != null) {
        groups.computeIfAbsent(c.page() + " " + c.statistic(), k -> new ArrayList<>()).add(c);
      }
    }
    Set<Candidate> members = new HashSet<>();
    for (List<Candidate> group : groups.values()) {
      long rates =
          group.stream()
              .map(c -> c.conditions().get(Conditions.DISCHARGE_RATE))
              .filter(Objects::nonNull)
              .distinct()
              .count();
      if (rates >= 3) {
        members.addAll(group);
      }
    }
    return members;
  }

  private static List<Candidate> merge(List<Candidate> candidates, Set<Candidate> series) {
    List<Candidate> kept = new ArrayList<>();
    for (Candidate c : candidates) {
      int same = -1;
      for (int i = 0; i < kept.size() && same < 0; i++) {
        boolean apart = series.contains(c) != series.contains(kept.get(i));
        if (!apart && sameStatement(kept.get(i), c)) {
          same = i;
        }
      }
      if (same < 0) {
        kept.add(c);
      } else {
        kept.set(same, better(kept.get(same), c));
      }
    }
    return new ArrayList<>(kept);
  }

  private static boolean sameStatement(Candidate a, Candidate b) {
    return a.quantity().equals(b.quantity())
        && sameNumbers(a, b)
        && sameStatistic(a, b)
        && a.conditions().agreeWith(b.conditions())
        && !testedApart(a, b)
        && !sharesApart(a, b);
  }

  /**
   * Shares of the capacity are told apart by their conditions alone: a missing one makes another
   * statement.
   */
  private static boolean sharesApart(Candidate a, Candidate b) {
    return a.quantity().startsWith("capacityRe")
        && (a.statistic() != b.statistic()
            || !a.conditions().values().keySet().equals(b.conditions().values().keySet()));
  }

  /** A bare cycle life on one page and one with its whole test on another are two statements. */
  private static boolean testedApart(Candidate a, Candidate b) {
    return a.quantity().equals("cycleLife")
        && a.page() != b.page()
        && Math.abs(a.conditions().values().size() - b.conditions().values().size()) >= 2;
  }

  private static boolean sameStatistic(Candidate a, Candidate b) {
    if (a.statistic() == b.statistic()) {
      return true;
    }
    boolean oneUnsaid = a.statistic() == null || b.statistic() == null;
    boolean bothDirect = !isProcedure(a) && !isProcedure(b);
    return oneUnsaid && !(a.quantity().equals("chargeVoltage") && bothDirect);
  }

  private static boolean isProcedure(Candidate c) {
    return c.mentioned() || c.rule().startsWith("procedure") || c.rule().startsWith("paragraph");
  }

  private static boolean sameNumbers(Candidate a, Candidate b) {
    return (same(a.value(), b.value()) || sameRate(a, b))
        && compatible(a.low(), b.low())
        && compatible(a.high(), b.high());
  }

  /**
   * 0.2 C here and "280 mA (0.2 C)" there are one current, whatever capacity the multiple was
   * worked out with.
   */
  private static boolean sameRate(Candidate a, Candidate b) {
    if (a.rate() == null && b.rate() == null) {
      return false;
    }
    String name = isDischarge(a) ? Conditions.DISCHARGE_RATE : Conditions.CHARGE_RATE;
    Double one = a.conditions().get(name);
    Double other = b.conditions().get(name);
    return one != null && other != null && same(one, other);
  }

  private static boolean isDischarge(Candidate c) {
    return c.quantity().toLowerCase(Locale.ROOT).contains("discharge");
  }

  private static boolean same(Double a, Double b) {
    if (a == null || b == null) {
      return Objects.equals(a, b);
    }
    return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b)) + 1e-12;
  }

  private static boolean compatible(Double a, Double b) {
    return a == null || b == null || same(a, b);
  }

  /**
   * The one that says more keeps its place; it takes the conditions the other adds, and loses no
   * certainty.
   */
  private static Candidate better(Candidate a, Candidate b) {
    boolean swapped = weight(b) > weight(a);
    Candidate first = swapped ? b : a;
    Candidate second = swapped ? a : b;
    Candidate merged = first.with(first.conditions().withMissingFrom(onlyRatesOf(first, second)));
    if (first.statistic() == null && second.statistic() != null) {
      merged = second.with(second.conditions().withMissingFrom(first.conditions()));
    }
    return merged;
  }

  /**
   * Conditions from a second place are taken over only where the first place states none at all.
   */
  private static Conditions onlyRatesOf(Candidate first, Candidate second) {
    return first.conditions().isEmpty() ? second.conditions() : Conditions.NONE;
  }

  private static int weight(Candidate c) {
    int weight = c.doubts().isEmpty() ? 4 : 0;
    weight += c.rate() == null ? 1 : 0;
    weight += c.low() != null ? 2 : 0;
    weight += c.rule().startsWith("table") || c.rule().startsWith("columns") ? 1 : 0;
    return weight;
  }

  // ---- in passing ----

  /**
   * What sentences mention counts where no line of the sheet is about it, and where it contradicts
   * one that is.
   */
  private List<Candidate> worthMentioning(List<Candidate> mentions, List<Candidate> said) {
    Map<String, List<Candidate>> byQuantity = new LinkedHashMap<>();
    for (Candidate c : mentions) {
      byQuantity.computeIfAbsent(c.quantity(), q -> new ArrayList<>()).add(c);
    }
    List<Candidate> taken = new ArrayList<>();
    byQuantity.forEach(
        (quantity, list) -> {
          List<Candidate> distinct = byValue(list);
          boolean direct =
              said.stream()
                  .anyMatch(
                      s ->
                          s.quantity().equals(quantity)
                              && s.conditions().get(Conditions.CYCLES) == null);
          if (quantity.equals("chargeVoltage")
              && direct
              && said.stream().noneMatch(Reconciler::isPlainChargeVoltage)) {
            distinct.removeIf(c -> !c.rule().startsWith("procedure"));
            direct = false;
          }
          if (quantity.equals("dischargeCutoffVoltage") && direct) {
            distinct.stream().filter(c -> contradictsPlainly(c, said)).forEach(taken::add);
          }
          distinct.stream().filter(c -> contradictsDrawing(c, said)).forEach(taken::add);
          if (!direct && distinct.size() == 1) {
            taken.add(distinct.get(0));
          } else if (!direct && !quantity.endsWith("Current")) {
            distinct.forEach(
                c ->
                    taken.add(
                        c.doubted("the sheet mentions several values and names none as its own")));
          }
        });
    return taken;
  }

  /** A procedure's charge voltage stands beside a maximum, not beside one without statistic. */
  private static boolean isPlainChargeVoltage(Candidate said) {
    return said.quantity().equals("chargeVoltage") && said.statistic() == null;
  }

  /** A sentence that names the end-of-discharge voltage and gives another than the table's. */
  private static boolean contradictsPlainly(Candidate c, List<Candidate> said) {
    return !c.rule().startsWith("mention")
        && !c.rule().startsWith("procedure")
        && said.stream()
            .filter(s -> s.quantity().equals(c.quantity()))
            .noneMatch(
                s ->
                    sameNumbers(s, c)
                        || (s.low() != null && c.value() >= s.low() && c.value() <= s.high()));
  }

  /** A diameter lettered on the drawing that no table agrees with stands beside the table's. */
  private static boolean contradictsDrawing(Candidate c, List<Candidate> said) {
    List<Candidate> direct = said.stream().filter(s -> s.quantity().equals(c.quantity())).toList();
    return c.rule().equals("drawing/diameter")
        && c.low() != null
        && !direct.isEmpty()
        && direct.stream().noneMatch(s -> overlap(s, c));
  }

  private static boolean overlap(Candidate a, Candidate b) {
    double aLow = a.low() != null ? a.low() : a.value();
    double aHigh = a.high() != null ? a.high() : a.value();
    return a.statistic() == Statistic.MAXIMUM
        ? b.low() <= aHigh
        : aLow <= b.high() && b.low() <= aHigh;
  }

  /**
   * Mentions of one value are one, whatever else their sentences say; those that share a condition
   * keep it.
   */
  private static List<Candidate> byValue(List<Candidate> mentions) {
    List<Candidate> kept = new ArrayList<>();
    for (Candidate c : mentions) {
      int same = -1;
      for (int i = 0; i < kept.size() && same < 0; i++) {
        same = sameNumbers(kept.get(i), c) ? i : -1;
      }
      if (same < 0) {
        kept.add(c);
      } else if ((kept.get(same).low() == null && c.low() != null)
          || (kept.get(same).rule().startsWith("mention") && !c.rule().startsWith("mention"))) {
        kept.set(same, c);
      } else if (!kept.get(same).conditions().agreeWith(c.conditions())) {
        kept.set(same, kept.get(same).with(Conditions.NONE));
      }
    }
    return kept;
  }

  // ---- contradictions ----

  private static List<Candidate> contradictions(List<Candidate> said) {
    List<Candidate> marked = new ArrayList<>();
    for (Candidate c : said) {
      Optional<Candidate> other = said.stream().filter(o -> contradict(c, o)).findFirst();
      marked.add(
          other.isPresent()
              ? c.doubted(
                  "the sheet also says "
                      + shownValue(other.get())
                      + " on page "
                      + other.get().page())
              : c);
    }
    return marked;
  }

  private static boolean contradict(Candidate a, Candidate b) {
    return a.quantity().equals(b.quantity())
        && a.statistic() == b.statistic()
        && a.conditions().equals(b.conditions())
        && !sameNumbers(a, b);
  }

  // ---- out ----

  private Statement statement(String id, Candidate c, Optional<Candidate> reference) {
    QuantityKind kind = quantities.get(c.quantity());
    List<String> doubts = new ArrayList<>(c.doubts());
    if (c.confidence() != null && c.confidence() < CONFIDENT) {
      doubts.add(
          "the words were recognised from a picture with confidence " + shown(c.confidence()));
    }
    String note = note(c, reference);
    Evidence evidence =
        new Evidence(
            c.page(),
            c.box() == null
                ? List.of()
                : List.of(
                    round(c.box().x()),
                    round(c.box().y()),
                    round(c.box().width()),
                    round(c.box().height())),
            c.text(),
            c.method(),
            c.rule(),
            c.confidence() == null ? WordSource.TEXT : WordSource.OCR,
            c.confidence(),
            note,
            null);
    return new Statement(
        id,
        c.quantity(),
        c.statistic(),
        c.value(),
        c.low(),
        c.high(),
        kind.unit(),
        c.conditions(),
        evidence,
        doubts.isEmpty() ? Standing.READ : Standing.UNSURE,
        doubts);
  }

  /**
   * What was done beyond reading: the capacity a multiple of C was worked out with, the conditions
   * taken by default.
   */
  private static String note(Candidate c, Optional<Candidate> reference) {
    if (c.rate() == null) {
      return c.note();
    }
    String rate =
        shown(c.rate())
            + " C of the "
            + statisticOf(reference)
            + "capacity "
            + shown(reference.orElseThrow().value())
            + " A.h";
    return c.note() == null ? rate : rate + "; " + c.note();
  }

  private static String statisticOf(Optional<Candidate> reference) {
    return reference.map(Candidate::statistic).map(s -> s.label() + " ").orElse("");
  }

  private static double round(double points) {
    return Math.round(points * 10) / 10.0;
  }

  private static String shownValue(Candidate c) {
    return c.value() != null ? shown(c.value()) : shown(c.low()) + " to " + shown(c.high());
  }

  static String shown(Double number) {
    return number == null
        ? "?"
        : new BigDecimal(number).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
