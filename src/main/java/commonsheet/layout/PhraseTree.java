package commonsheet.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Phrases by their tokens; finds, from left to right, the longest phrase at every place of a text.
 */
final class PhraseTree {
  /**
   * Words shorter than this are not looked for inside longer ones: too many would fit by chance.
   */
  private static final int SHORTEST_COMPOUND_PART = 4;

  private static final class Node {
    final Map<String, Node> next = new HashMap<>();
    List<String> means;
  }

  private final Node root = new Node();
  private final Spelling spelling = new Spelling();
  private final Map<String, List<String>> singleWords = new HashMap<>();

  /** A later phrase of the same words adds nothing: the first vocabulary that names it decides. */
  void add(String phrase, List<String> means) {
    Node node = root;
    List<Tokens.Token> tokens = Tokens.of(phrase);
    for (Tokens.Token token : tokens) {
      node = node.next.computeIfAbsent(token.form(), form -> new Node());
      spelling.learn(token.form());
    }
    if (node.means == null && node != root) {
      node.means = List.copyOf(means);
      if (tokens.size() == 1 && phrase.length() >= SHORTEST_COMPOUND_PART) {
        singleWords.putIfAbsent(tokens.get(0).form(), node.means);
      }
    }
  }

  /** The phrases found, in order, not overlapping. */
  List<Hit> find(String text) {
    List<Tokens.Token> tokens = Tokens.of(text);
    List<Hit> hits = new ArrayList<>();
    int i = 0;
    while (i < tokens.size()) {
      int length = longestAt(tokens, i, hits);
      if (length == 0 && !compound(tokens.get(i), hits)) {
        i++;
      } else {
        i += Math.max(1, length);
      }
    }
    return hits;
  }

  private int longestAt(List<Tokens.Token> tokens, int first, List<Hit> hits) {
    Node node = root;
    Node best = null;
    int bestLength = 0;
    for (int i = first; i < tokens.size(); i++) {
      Node next = node.next.get(tokens.get(i).form());
      if (next == null) {
        String meant = spelling.meant(tokens.get(i).form());
        next = meant == null ? null : node.next.get(meant);
      }
      node = next;
      if (node == null) {
        break;
      }
      if (node.means != null && !(i == first && insideIdeographs(tokens, i))) {
        best = node;
        bestLength = i - first + 1;
      }
    }
    if (best != null) {
      hits.add(
          new Hit(best.means, tokens.get(first).start(), tokens.get(first + bestLength - 1).end()));
    }
    return bestLength;
  }

  /**
   * A single ideograph says a thing only where it stands alone: not as part of a name or another
   * word.
   */
  private static boolean insideIdeographs(List<Tokens.Token> tokens, int i) {
    Tokens.Token token = tokens.get(i);
    if (!Tokens.isIdeograph(token.form().charAt(0))) {
      return false;
    }
    boolean before =
        i > 0
            && tokens.get(i - 1).end() == token.start()
            && Tokens.isIdeograph(tokens.get(i - 1).form().charAt(0));
    boolean after =
        i + 1 < tokens.size()
            && tokens.get(i + 1).start() == token.end()
            && Tokens.isIdeograph(tokens.get(i + 1).form().charAt(0));
    return before || after;
  }

  /** A word made of known words without a gap: "Shippingvoltage", "Entladeschlussspannung". */
  private boolean compound(Tokens.Token token, List<Hit> hits) {
    if (token.form().length() < 2 * SHORTEST_COMPOUND_PART) {
      return false;
    }
    Set<String> means = new HashSet<>();
    if (!split(token.form(), 0, means)) {
      return false;
    }
    hits.add(new Hit(List.copyOf(means), token.start(), token.end()));
    return true;
  }

  private boolean split(String word, int from, Set<String> means) {
    if (from == word.length()) {
      return true;
    }
    for (int to = word.length(); to >= from + SHORTEST_COMPOUND_PART; to--) {
      List<String> part = singleWords.get(word.substring(from, to));
      if (part != null) {
        // German joins words with an s between them.
        int next =
            to < word.length() - 1 && word.charAt(to) == 's' && split(word, to + 1, means)
                ? word.length()
                : to;
        if (next == word.length() || split(word, to, means)) {
          means.addAll(part);
          return true;
        }
      }
    }
    return false;
  }
}
