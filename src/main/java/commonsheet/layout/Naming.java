package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.QuantityCatalogue;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Names the quantity that a figure is of, by the concepts of the words around it. */
final class Naming {
  /**
   * A piece with more words than this is a sentence, in which a word counts only for the figure
   * after it.
   */
  private static final int LONGEST_ITEM_WORDS = 16;

  /** A heading is about what takes up this share of its letters. */
  private static final double MAINLY = 0.35;

  /** A remark of so few words ("Charging") can say which of two quantities a row is about. */
  private static final int SHORT_REMARK_WORDS = 8;

  /** What a share is of stands no further behind it than this many characters. */
  private static final int REACH = 48;

  private static final Set<Dimension> CURRENTS = EnumSet.of(Dimension.CURRENT, Dimension.RATE);

  /** Words that follow a current and say which it is: "3C continuous, 5C pulse". */
  private static final Set<String> KINDS_OF_CURRENT =
      Set.of("continuous", "pulse", "standard", "fast", "maximum");

  private static final Set<String> KINDS_OF_QUANTITY = Set.of("voltage", "current", "capacity");

  private static final Set<String> SHARES = Set.of("capacity", "retention", "recovery", "minimum");

  /** "90 % min. of rated": what is left unsaid is the capacity. */
  private static final Pattern OF_THE_RATED =
      Pattern.compile("(?i)\\s*(min\\.?|minimum|or more)?\\s*of (the )?(rated|nominal|initial)\\b");

  private static final Pattern IN_BRACKETS =
      Pattern.compile("[(\\uFF08\\[][^)\\uFF09\\]]*[)\\uFF09\\]]");
  private static final Set<String> DIRECTIONS = Set.of("charge", "discharge");

  private static final List<String> DIMENSIONS =
      List.of("diameter", "height", "width", "thickness", "length");

  /** Concepts of which an inner word takes the place of an outer one. */
  private static final List<List<String>> RIVALS =
      List.of(
          List.of("charge", "discharge"),
          List.of("continuous", "pulse"),
          List.of("ac", "dc"),
          List.of("retention", "recovery"),
          List.of("specificenergy", "energydensity"),
          List.of("standard", "fast"),
          List.of("standard", "maximum"),
          List.of("nominal", "charge", "discharge"),
          DIMENSIONS);

  private final Vocabulary vocabulary;
  private final Terms terms;
  private final QuantityCatalogue quantities;

  Naming(Vocabulary vocabulary, Terms terms, QuantityCatalogue quantities) {
    this.vocabulary = vocabulary;
    this.terms = terms;
    this.quantities = quantities;
  }

  Set<String> outer(Entry entry) {
    Set<String> outer = new LinkedHashSet<>();
    for (Passage label : entry.labels()) {
      outer = merge(outer, vocabulary.conceptsOf(label.text()));
    }
    return outer;
  }

  /** Whether the entry is about something that is no rating of the cell. */
  boolean blocked(Entry entry) {
    if (isAboutBlocked(withoutBrackets(entry.section()))) {
      return true;
    }
    return entry.labels().stream()
        .anyMatch(label -> terms.blocked(vocabulary.conceptsOf(withoutBrackets(label.text()))));
  }

  /**
   * Whether a heading is mainly about something that is no rating; a title may mention a protection
   * circuit.
   */
  private boolean isAboutBlocked(String heading) {
    List<Hit> hits = vocabulary.hits(heading);
    List<Hit> blockers = hits.stream().filter(h -> terms.blocked(Set.copyOf(h.means()))).toList();
    Set<String> concepts = vocabulary.concepts(hits);
    return vocabulary.coverage(heading, blockers) >= MAINLY
        && terms.fitting(concepts).isEmpty()
        && !concepts.contains("dimension");
  }

  static String withoutBrackets(String text) {
    String without = IN_BRACKETS.matcher(text).replaceAll(" ");
    return without.isBlank() ? text : without;
  }

  /**
   * Each term that names a figure of the piece, with the figures it names; in order of the figures.
   */
  Map<Term, List<Figure>> named(
      Entry entry, Passage piece, List<Figure> figures, Set<String> outer, Passage remark) {
    Map<Term, List<Figure>> named = namedBy(piece, figures, outer);
    if (named.isEmpty() && !entry.section().isBlank() && !isSentence(entry.section())) {
      // Under the heading "Temperature", "Charge" is a temperature.
      named = namedBy(piece, figures, merge(vocabulary.conceptsOf(entry.section()), outer));
      named.values().removeIf(list -> list.stream().anyMatch(f -> f.unit() == null));
    }
    boolean open = named.keySet().stream().allMatch(Term::weak);
    if (open && isShortRemark(remark)) {
      Map<Term, List<Figure>> byRemark =
          namedBy(piece, figures, merge(outer, vocabulary.conceptsOf(remark.text())));
      named = byRemark.isEmpty() ? named : byRemark;
    }
    return named;
  }

  private Map<Term, List<Figure>> namedBy(Passage piece, List<Figure> figures, Set<String> outer) {
    Map<Term, List<Figure>> named = new LinkedHashMap<>();
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      Set<String> inner = inner(piece, figures, i);
      if (terms.blocked(inner)) {
        continue;
      }
      for (Term term : terms.fitting(merge(outer, inner))) {
        if (Fit.fits(quantities.get(term.quantity()), figure) && Fit.isPlain(figure, piece)) {
          named.computeIfAbsent(term, t -> new ArrayList<>()).add(figure);
        }
      }
    }
    return named;
  }

  /** The concepts of the words that introduce a figure. */
  Set<String> inner(Passage piece, List<Figure> figures, int index) {
    Figure figure = figures.get(index);
    String text = piece.text();
    int from = 0;
    if (isSentence(text)) {
      from = index == 0 ? 0 : figures.get(index - 1).end();
      from = Math.max(from, lastStop(text, figure.start()));
    }
    Set<String> inner =
        new LinkedHashSet<>(
            vocabulary.conceptsOf(introducing(text.substring(from, figure.start()))));
    if (figure.qualifier() != null) {
      inner.add(figure.qualifier().name().toLowerCase(Locale.ROOT));
    }
    if (figure.unit() != null && figure.unit().dimension() == Dimension.RATIO) {
      inner = merge(inner, after(text, figures, index, SHARES));
      if (OF_THE_RATED.matcher(text.substring(figure.end())).lookingAt()) {
        inner.add("capacity");
      }
    } else if (figure.unit() != null && CURRENTS.contains(figure.unit().dimension())) {
      inner = merge(inner, after(text, figures, index, KINDS_OF_CURRENT));
    }
    return inner;
  }

  /** A share is followed by what it is of: "80 % of the nominal capacity", "90 % (retention)". */
  private Set<String> after(String text, List<Figure> figures, int index, Set<String> wanted) {
    int from = figures.get(index).end();
    int to = index + 1 < figures.size() ? figures.get(index + 1).start() : text.length();
    for (int i = from; i < to; i++) {
      if (",;\u3002\uFF0C\uFF1B".indexOf(text.charAt(i)) >= 0) {
        to = i;
      }
    }
    Set<String> named =
        new LinkedHashSet<>(
            vocabulary.conceptsOf(text.substring(from, Math.min(to, from + REACH))));
    named.retainAll(wanted);
    return named;
  }

  static boolean isSentence(String text) {
    return Tokens.of(text).size() > LONGEST_ITEM_WORDS;
  }

  /** Where the last sentence before a place ends: a full stop and a capital, or the Chinese one. */
  private static int lastStop(String text, int before) {
    for (int i = before - 1; i > 0; i--) {
      char c = text.charAt(i);
      boolean stop =
          c == '.'
              && i + 2 < before
              && Character.isWhitespace(text.charAt(i + 1))
              && Character.isUpperCase(text.charAt(i + 2));
      if (stop || c == '\u3002') {
        return i;
      }
    }
    return 0;
  }

  /** Whether no sentence ends between two figures of a text. */
  static boolean sameSentence(String text, Figure a, Figure b) {
    int first = Math.min(a.start(), b.start());
    int second = Math.max(a.start(), b.start());
    return lastStop(text, second) <= first;
  }

  /** Words in brackets and after an "@" are conditions. */
  private static String introducing(String before) {
    String plain = withoutBrackets(before + " ");
    int at = plain.indexOf('@');
    return at >= 0 ? plain.substring(0, at) : plain;
  }

  /**
   * The inner words say more exactly what the outer ones announce: "Operating temperature" /
   * "Charge".
   */
  static Set<String> merge(Set<String> outer, Set<String> inner) {
    Set<String> merged = new LinkedHashSet<>(outer);
    for (List<String> rivals : RIVALS) {
      long here = rivals.stream().filter(inner::contains).count();
      if (here == 1) {
        rivals.forEach(merged::remove);
      }
    }
    if (inner.contains("storage")) {
      merged.removeAll(DIRECTIONS);
    } else if (inner.stream().anyMatch(DIRECTIONS::contains)) {
      merged.remove("storage");
    }
    merged.addAll(inner);
    return merged;
  }

  /** Whether the words of a passage by themselves name one of its figures. */
  boolean namesItself(Passage passage, List<Figure> figures) {
    return !namedBy(passage, figures, Set.of()).isEmpty();
  }

  /** Whether labels, under a section's heading, name one of the figures beside them. */
  boolean namesWith(List<Passage> labels, Passage value, List<Figure> figures, String section) {
    Set<String> outer = new LinkedHashSet<>();
    for (Passage label : labels) {
      outer = merge(outer, vocabulary.conceptsOf(label.text()));
    }
    return !namedBy(value, figures, outer).isEmpty()
        || terms.procedure(outer).isPresent()
        || (!section.isBlank()
            && !isSentence(section)
            && !namedBy(value, figures, merge(vocabulary.conceptsOf(section), outer)).isEmpty());
  }

  /** Whether a label names a quantity that the figure can be a value of. */
  boolean names(String label, Figure figure) {
    Set<String> concepts = vocabulary.conceptsOf(label);
    return terms.fitting(concepts).stream()
        .anyMatch(t -> Fit.fits(quantities.get(t.quantity()), figure));
  }

  /** Whether the labels of an entry, or the heading it stands under, speak of something. */
  boolean isAbout(Entry entry, String concept) {
    return outer(entry).contains(concept)
        || vocabulary.conceptsOf(entry.section()).contains(concept);
  }

  /** Whether one label, or the piece beside it, names more than one dimension: "宽(厚) Thickness". */
  boolean namesSeveralDimensions(Entry entry, Passage piece) {
    List<Passage> texts = new ArrayList<>(entry.labels());
    texts.add(piece);
    return texts.stream()
        .map(t -> vocabulary.conceptsOf(t.text()))
        .anyMatch(c -> DIMENSIONS.stream().filter(c::contains).count() > 1);
  }

  /**
   * Whether a line of a label says a thing by itself: it names a quantity, or adds a condition in
   * brackets.
   */
  boolean standsAlone(String line) {
    String text = line.trim();
    return text.startsWith("(")
        || text.startsWith("\uFF08")
        || !terms.fitting(vocabulary.conceptsOf(text)).isEmpty();
  }

  /** Whether a piece has a label that says no more than a kind of quantity: "Voltage: 3.7 V". */
  boolean isLabelled(Passage piece) {
    int colon = piece.text().indexOf(':');
    Set<String> concepts =
        colon < 0 ? Set.of() : vocabulary.conceptsOf(piece.text().substring(0, colon));
    return !concepts.isEmpty() && KINDS_OF_QUANTITY.containsAll(concepts);
  }

  /** Whether a text says something that the vocabulary knows. */
  boolean isKnown(String text) {
    return !vocabulary.conceptsOf(text).isEmpty();
  }

  /** How much of the label's words the vocabulary knows, 0 to 1. */
  double understood(Entry entry) {
    String label = entry.label();
    return label.isBlank() ? 1 : vocabulary.coverage(label, vocabulary.hits(label));
  }

  /** The concepts of the words before a figure, then those of the labels, the innermost first. */
  List<Set<String>> fromInside(Entry entry, Passage piece, List<Figure> figures, int index) {
    List<Set<String>> sets = new ArrayList<>();
    sets.add(inner(piece, figures, index));
    sets.addAll(fromOutside(entry));
    return sets;
  }

  /** The same, and last those of a short remark beside the value. */
  List<Set<String>> fromInside(Entry entry, Entry.Value value, List<Figure> figures, int index) {
    List<Set<String>> sets = fromInside(entry, value.text(), figures, index);
    if (isShortRemark(value.conditions())) {
      sets.add(vocabulary.conceptsOf(value.conditions().text()));
    }
    return sets;
  }

  private static boolean isShortRemark(Passage remark) {
    return !remark.isBlank() && Tokens.of(remark.text()).size() <= SHORT_REMARK_WORDS;
  }

  List<Set<String>> fromOutside(Entry entry) {
    List<Set<String>> sets = new ArrayList<>();
    for (int i = entry.labels().size() - 1; i >= 0; i--) {
      sets.add(vocabulary.conceptsOf(entry.labels().get(i).text()));
    }
    return sets;
  }
}
