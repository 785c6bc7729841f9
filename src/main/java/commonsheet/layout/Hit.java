package commonsheet.layout;

import java.util.List;

/** A known phrase in a text: what it means, and its place [start, end). */
record Hit(List<String> means, int start, int end) {
  boolean means(String concept) {
    return means.contains(concept);
  }
}
