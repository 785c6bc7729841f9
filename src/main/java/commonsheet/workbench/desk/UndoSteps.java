package commonsheet.workbench.desk;

import java.util.ArrayList;
import java.util.List;

/**
 * The versions that a record file went through, oldest first. Where the file stands among them is
 * told by its own version, so that nothing has to be kept in step with it: a file that somebody
 * else has changed, or a change that was cut short, is simply not among them or earlier.
 */
record UndoSteps(List<Step> steps) {
  /** Enough for an afternoon at one sheet. */
  static final int MOST = 200;

  static final UndoSteps NONE = new UndoSteps(List.of());

  /**
   * A version of the file and what led to it.
   *
   * @param version SHA-256 of the file
   * @param what the deed, such as {@code confirm s3}; null for the oldest, like {@code by}
   */
  record Step(String version, String what, String by) {}

  UndoSteps {
    steps = steps == null ? List.of() : List.copyOf(steps);
  }

  /** Where a version stands, or -1. */
  private int place(String version) {
    for (int i = steps.size() - 1; i >= 0; i--) {
      if (steps.get(i).version().equals(version)) {
        return i;
      }
    }
    return -1;
  }

  /** What led to a version, or null where that is not known. */
  Step leadingTo(String version) {
    int place = place(version);
    return place < 1 ? null : steps.get(place);
  }

  /** What was undone last, coming back to a version; null for nothing. */
  Step after(String version) {
    int place = place(version);
    return place < 0 || place + 1 >= steps.size() ? null : steps.get(place + 1);
  }

  /** The version before one, or null. */
  String before(String version) {
    int place = place(version);
    return place < 1 ? null : steps.get(place - 1).version();
  }

  /** With one more deed; what was undone before it can no longer be done again. */
  UndoSteps with(String before, Step step) {
    int place = place(before);
    List<Step> more = new ArrayList<>(place < 0 ? List.of() : steps.subList(0, place + 1));
    if (place < 0) {
      more.add(new Step(before, null, null));
    }
    more.add(step);
    return new UndoSteps(more.subList(Math.max(0, more.size() - MOST - 1), more.size()));
  }

  boolean names(String version) {
    return place(version) >= 0;
  }
}
