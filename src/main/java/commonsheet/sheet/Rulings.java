package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rulings of a page or of one table, level and upright ones apart, each once. */
record Rulings(List<Ruling> level, List<Ruling> upright) {
  /** Points within which parallel lines are one: double borders, and both edges of a thin frame. */
  private static final double SAME_LINE = 2.6;

  /** Points a line may be interrupted and still go on: dashes, borders drawn cell by cell. */
  private static final double GAP = 3.2;

  /** Points by which a line may miss the one it was meant to meet. */
  static final double MISS = 3.2;

  /** Points within which lines touch, once their ends have been moved to meet. */
  private static final double TOUCH = 0.5;

  /** Shortest line that can be a border, in points: half a line of small print. */
  private static final double SHORTEST = 4;

  /** Joins pieces of the same line, snaps neighbours together and lets ends meet. */
  static Rulings merged(List<Ruling> pieces) {
    Rulings joined = new Rulings(join(pieces, true), join(pieces, false));
    return new Rulings(
        joined.level.stream().map(r -> meet(r, joined.upright)).toList(),
        joined.upright.stream().map(r -> meet(r, joined.level)).toList());
  }

  /** The lines of one direction, ordered by where they lie. */
  private static List<Ruling> join(List<Ruling> pieces, boolean level) {
    List<Ruling> sorted = new ArrayList<>(pieces);
    sorted.removeIf(r -> r.level() != level);
    sorted.sort(Comparator.comparingDouble(Ruling::at));
    List<Ruling> out = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      boolean ends = i == sorted.size() || sorted.get(i).at() - sorted.get(from).at() > SAME_LINE;
      if (ends && i > from) {
        joinBundle(sorted.subList(from, i), out);
        from = i;
      }
    }
    out.removeIf(r -> r.length() < SHORTEST);
    return out;
  }

  /** Joins pieces that lie on one line. */
  private static void joinBundle(List<Ruling> bundle, List<Ruling> out) {
    double weight = bundle.stream().mapToDouble(r -> r.length() + 0.01).sum();
    double at = bundle.stream().mapToDouble(r -> r.at() * (r.length() + 0.01)).sum() / weight;
    List<Ruling> byStart = new ArrayList<>(bundle);
    byStart.sort(Comparator.comparingDouble(Ruling::from));
    Ruling line = null;
    for (Ruling piece : byStart) {
      if (line != null && piece.from() - line.to() <= GAP) {
        line = line.moved(at, line.from(), Math.max(line.to(), piece.to()));
      } else {
        if (line != null) {
          out.add(line);
        }
        line = piece.moved(at, piece.from(), piece.to());
      }
    }
    out.add(line);
  }

  private static Ruling meet(Ruling line, List<Ruling> across) {
    double from = line.from();
    double to = line.to();
    for (Ruling other : within(across, from - MISS, to + MISS)) {
      if (line.meets(other, MISS)) {
        if (Math.abs(other.at() - line.from()) <= MISS) {
          from = Math.min(from, other.at());
        }
        if (Math.abs(other.at() - line.to()) <= MISS) {
          to = Math.max(to, other.at());
        }
      }
    }
    return line.moved(line.at(), from, to);
  }

  List<Ruling> all() {
    List<Ruling> all = new ArrayList<>(level);
    all.addAll(upright);
    return all;
  }

  boolean isEmpty() {
    return level.isEmpty() && upright.isEmpty();
  }

  /** How many pairs of lines could cross: a measure of the work of finding cells. */
  long pairs() {
    return (long) level.size() * upright.size();
  }

  Box box() {
    return Box.around(all().stream().map(Ruling::box).toList());
  }

  /** The groups of lines that hang together by crossing or touching, each ordered by place. */
  List<Rulings> connected() {
    int n = level.size();
    int[] group = new int[n + upright.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int i = 0; i < n; i++) {
      Ruling line = level.get(i);
      int j = firstFrom(upright, line.from() - TOUCH);
      for (; j < upright.size() && upright.get(j).at() <= line.to() + TOUCH; j++) {
        if (line.meets(upright.get(j), TOUCH)) {
          group[root(group, n + j)] = root(group, i);
        }
      }
    }
    Map<Integer, Rulings> groups = new LinkedHashMap<>();
    for (int i = 0; i < group.length; i++) {
      Rulings own =
          groups.computeIfAbsent(
              root(group, i), g -> new Rulings(new ArrayList<>(), new ArrayList<>()));
      if (i < n) {
        own.level.add(level.get(i));
      } else {
        own.upright.add(upright.get(i - n));
      }
    }
    return List.copyOf(groups.values());
  }

  private static List<Ruling> within(List<Ruling> sorted, double from, double to) {
    int first = firstFrom(sorted, from);
    int end = first;
    while (end < sorted.size() && sorted.get(end).at() <= to) {
      end++;
    }
    return sorted.subList(first, end);
  }

  private static int firstFrom(List<Ruling> sorted, double at) {
    int low = 0;
    int high = sorted.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (sorted.get(middle).at() < at) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static int root(int[] group, int i) {
    int at = i;
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }
}
