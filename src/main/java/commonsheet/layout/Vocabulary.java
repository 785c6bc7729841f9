package commonsheet.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the words on a sheet mean: phrases of one or several languages, and of a layout rule, mapped
 * to concepts that know no language. Three sets are kept apart: labels and sentences, column
 * headings, and the words that introduce the cell's identity.
 */
final class Vocabulary {
  /** One phrase list as a vocabulary or rule file holds it. */
  record Phrases(String means, List<String> say) {}

  /** Column headings of one role. */
  record Heading(String role, List<String> say) {}

  private final Map<String, List<String>> labels = new HashMap<>();
  private final PhraseTree phrases = new PhraseTree();
  private final Map<String, List<Hit>> known = new HashMap<>();
  private final PhraseTree headings = new PhraseTree();
  private final PhraseTree identity = new PhraseTree();

  /** A label that means this as a whole and nothing where it is part of another. */
  void addLabels(List<Phrases> list) {
    known.clear();
    list.forEach(
        p -> p.say().forEach(label -> labels.putIfAbsent(Tokens.key(label), concepts(p.means()))));
  }

  void addPhrases(List<Phrases> list) {
    known.clear();
    list.forEach(p -> p.say().forEach(phrase -> phrases.add(phrase, concepts(p.means()))));
  }

  void addHeadings(List<Heading> list) {
    list.forEach(h -> h.say().forEach(phrase -> headings.add(phrase, List.of(h.role()))));
  }

  void addIdentity(List<Phrases> list) {
    list.forEach(p -> p.say().forEach(phrase -> identity.add(phrase, concepts(p.means()))));
  }

  private static List<String> concepts(String means) {
    return List.of(means.trim().split("\\s+"));
  }

  /** The phrases of a text; a text is looked at from several sides and searched once. */
  List<Hit> hits(String text) {
    return known.computeIfAbsent(text, this::search);
  }

  private List<Hit> search(String text) {
    List<String> whole = labels.isEmpty() ? null : labels.get(Tokens.key(text));
    if (whole != null) {
      return List.of(new Hit(whole, 0, text.length()));
    }
    return phrases.find(text);
  }

  Set<String> concepts(List<Hit> hits) {
    Set<String> all = new LinkedHashSet<>();
    hits.forEach(hit -> all.addAll(hit.means()));
    return all;
  }

  Set<String> conceptsOf(String text) {
    return concepts(hits(text));
  }

  List<Hit> identityHits(String text) {
    return identity.find(text);
  }

  /** How much of the words of a text the hits explain, 0 to 1; numbers do not count. */
  double coverage(String text, List<Hit> hits) {
    int all = 0;
    int known = 0;
    for (Tokens.Token token : Tokens.of(text)) {
      if (token.isWord()) {
        int length = token.end() - token.start();
        all += length;
        if (hits.stream()
            .anyMatch(hit -> token.start() >= hit.start() && token.end() <= hit.end())) {
          known += length;
        }
      }
    }
    return all == 0 ? hits.isEmpty() ? 0 : 1 : known / (double) all;
  }

  List<Hit> roleHits(String heading) {
    return headings.find(heading);
  }

  /** The role of a column whose heading reads so; empty where the heading is something else. */
  Optional<Role> role(String heading) {
    List<Hit> hits = headings.find(heading);
    if (hits.isEmpty()) {
      return Optional.empty();
    }
    // A heading in two languages names its role twice; "Test Item" names one by its longest phrase.
    Set<String> roles =
        new LinkedHashSet<>(hits.stream().flatMap(hit -> hit.means().stream()).toList());
    if (coverage(heading, hits) < 0.6) {
      return Optional.empty();
    }
    List<Role> found = new ArrayList<>();
    for (String role : roles) {
      found.add(Role.named(role));
    }
    return Optional.of(found.get(0));
  }

  /**
   * Languages of a text: those of its scripts, and those whose own words appear in it often enough.
   */
  static Set<String> wordsOf(String text) {
    Set<String> words = new HashSet<>();
    Tokens.of(text).forEach(token -> words.add(token.form()));
    return words;
  }
}
