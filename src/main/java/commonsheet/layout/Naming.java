package commonsheet.layout;

import commonsheet.quantity.Figure;
import commonsheet.quantity.QuantityCatalogue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Names the quantity that a figure is of, by the concepts of the words around it. */
final class Naming {
  /** A piece with more words than this is a sentence, in which a word counts only for the figure after it. */
  private static final int LONGEST_ITEM_WORDS = 16;

  /** A remark of so few words ("Charging") can say which of two quantities a row is about. */
  private static final int SHORT_REMARK_WORDS = 8;

  private static final Pattern IN_BRACKETS = Pattern.compile("[(\\uFF08\\[][^)\\uFF09\\]]*[)\\uFF09\\]]");
  private static final Set<String> DIRECTIONS = Set.of("charge", "discharge");

  /** Concepts of which an inner word takes the place of an outer one. */
  private static final List<List<String>> RIVALS =
      List.of(
          List.of("charge", "discharge"),
          List.of("continuous", "pulse"),
          List.of("ac", "dc"),
          List.of("retention", "recovery"),
          List.of("specificenergy", "energydensity"),
          List.of("standard", "fast"),
          List.of("standard", "maximum"));

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
    Set<String> section = vocabulary.conceptsOf(withoutBrackets(entry.section()));
    if (terms.blocked(section) && terms.fitting(section).isEmpty()) {
      return true;
    }
    return entry.labels().stream()
        .anyMatch(label -> terms.blocked(vocabulary.conceptsOf(withoutBrackets(label.text()))));
  }

  static String withoutBrackets(String text) {
    String without = IN_BRACKETS.matcher(text).replaceAll(" ");
    return without.isBlank() ? text : without;
  }

  /** Each term that names a figure of the piece, with the figures it names; in order of the figures. */
  Map<Term, List<Figure>> named(Passage piece, List<Figure> figures, Set<String> outer, Passage remark) {
    Map<Term, List<Figure>> named = namedBy(piece, figures, outer);
    if (named.isEmpty() && Tokens.of(remark.text()).size() <= SHORT_REMARK_WORDS) {
      named = namedBy(piece, figures, merge(outer, vocabulary.conceptsOf(remark.text())));
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
    return vocabulary.conceptsOf(introducing(text.substring(from, figure.start())));
  }

  static boolean isSentence(String text) {
    return Tokens.of(text).size() > LONGEST_ITEM_WORDS;
  }

  private static int lastStop(String text, int before) {
    int stop = Math.max(text.lastIndexOf(". ", before), text.lastIndexOf('\u3002', before));
    return Math.max(0, stop);
  }

  /** Words in brackets and after an "@" are conditions. */
  private static String introducing(String before) {
    String plain = withoutBrackets(before + " ");
    int at = plain.indexOf('@');
    return at >= 0 ? plain.substring(0, at) : plain;
  }

  /** The inner words say more exactly what the outer ones announce: "Operating temperature" / "Charge". */
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

  List<Set<String>> fromOutside(Entry entry) {
    List<Set<String>> sets = new ArrayList<>();
    for (int i = entry.labels().size() - 1; i >= 0; i--) {
      sets.add(vocabulary.conceptsOf(entry.labels().get(i).text()));
    }
    return sets;
  }
}
