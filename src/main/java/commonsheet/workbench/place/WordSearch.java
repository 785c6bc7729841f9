package commonsheet.workbench.place;

import commonsheet.sheet.Box;
import commonsheet.sheet.Page;
import commonsheet.sheet.Word;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/**
 * Finds a text in the words of a sheet as a reader means it: in small letters or large, in letters
 * of any width, over several words that follow each other, and inside of words.
 */
final class WordSearch {
  /** More places than anybody goes through. */
  private static final int MOST = 500;

  /** Share of the height that words of one line have in common. */
  private static final double ONE_LINE = 0.5;

  private final String wanted;

  /** Where in the wanted text, without its spaces, there was one. */
  private final BitSet spaces;

  private WordSearch(String wanted, BitSet spaces) {
    this.wanted = wanted;
    this.spaces = spaces;
  }

  /** A search; of nothing but spaces it finds nothing. */
  static WordSearch of(String text) {
    StringBuilder wanted = new StringBuilder();
    BitSet spaces = new BitSet();
    for (char each : folded(text).toCharArray()) {
      if (each == ' ') {
        spaces.set(wanted.length());
      } else {
        wanted.append(each);
      }
    }
    return new WordSearch(wanted.toString(), spaces);
  }

  /**
   * One place.
   *
   * @param boxes around its words, one for each line
   */
  record Hit(int page, List<Box> boxes, String text) {}

  /** The places in the order of the pages, the first ones where there are very many. */
  List<Hit> in(List<Page> pages) {
    List<Hit> hits = new ArrayList<>();
    if (!wanted.isEmpty()) {
      pages.forEach(page -> find(page, hits));
    }
    return hits;
  }

  private void find(Page page, List<Hit> hits) {
    StringBuilder all = new StringBuilder();
    List<Integer> wordOf = new ArrayList<>();
    for (int word = 0; word < page.words().size(); word++) {
      String folded = folded(page.words().get(word).text()).replace(" ", "");
      all.append(folded);
      for (int i = 0; i < folded.length(); i++) {
        wordOf.add(word);
      }
    }
    for (int at = all.indexOf(wanted);
        at >= 0 && hits.size() < MOST;
        at = all.indexOf(wanted, at + 1)) {
      if (isSaid(all, wordOf, at)) {
        int last = wordOf.get(at + wanted.length() - 1);
        hits.add(hit(page, page.words().subList(wordOf.get(at), last + 1)));
      }
    }
  }

  /**
   * Whether the words part where the wanted text has spaces. Between a number and its unit, and
   * wherever else no two letters meet, a space or none is the same.
   */
  private boolean isSaid(StringBuilder all, List<Integer> wordOf, int at) {
    for (int i = 1; i < wanted.length(); i++) {
      boolean parts = !wordOf.get(at + i).equals(wordOf.get(at + i - 1));
      if (parts != spaces.get(i)
          && isLetter(all.charAt(at + i))
          && isLetter(all.charAt(at + i - 1))) {
        return false;
      }
    }
    return true;
  }

  /** Ideographs are letters to Unicode, but no spaces tell their words apart. */
  private static boolean isLetter(char each) {
    return Character.isLetter(each) && !Character.isIdeographic(each);
  }

  private static Hit hit(Page page, List<Word> words) {
    List<Box> boxes = new ArrayList<>();
    for (Word word : words) {
      int last = boxes.size() - 1;
      if (last >= 0 && boxes.get(last).sharedHeight(word.box()) > ONE_LINE) {
        boxes.set(last, boxes.get(last).union(word.box()));
      } else {
        boxes.add(word.box());
      }
    }
    return new Hit(page.number(), boxes, String.join(" ", words.stream().map(Word::text).toList()));
  }

  /** Compatibility forms as plain ones, all kinds of white space as a space, small letters. */
  private static String folded(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s+", " ")
        .strip();
  }
}
