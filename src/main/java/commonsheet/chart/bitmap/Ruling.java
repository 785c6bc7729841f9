package commonsheet.chart.bitmap;

/**
 * Which pixels of a field belong to the plot's own lines: axes, frame, grid, ticks. Where a curve
 * crosses one, its pixels stay.
 */
final class Ruling {
  /** How far a pixel may differ in strength from the line it belongs to. */
  private static final double TOLERANCE = 14;

  private final Field field;
  private final boolean[] ruled;

  private Ruling(Field field) {
    this.field = field;
    this.ruled = new boolean[field.size()];
  }

  static boolean[] of(Field field, Lattice lattice) {
    Ruling ruling = new Ruling(field);
    for (Rule rule : lattice.levels()) {
      boolean side = isSide(rule, lattice.area().top(), lattice.area().bottom());
      ruling.mark(rule, field.top, field.height, field.width, field.width, 1, side);
    }
    for (Rule rule : lattice.uprights()) {
      boolean side = isSide(rule, lattice.area().left(), lattice.area().right());
      ruling.mark(rule, field.left, field.width, field.height, 1, field.width, side);
    }
    ruling.markTicks(lattice);
    ruling.markOutside(lattice.area());
    return ruling.ruled;
  }

  private static boolean isSide(Rule rule, double low, double high) {
    return Math.abs(rule.at() - low) < 2 || Math.abs(rule.at() - high) < 2;
  }

  /**
   * Marks the pixels of one line.
   *
   * @param origin row (or column) of the picture at which the field begins
   * @param across rows (or columns) of the field
   * @param along columns (or rows) of the field
   * @param stepAcross from a pixel to the next across the line
   * @param stepAlong from a pixel to the next along the line
   */
  private void mark(
      Rule rule, int origin, int across, int along, int stepAcross, int stepAlong, boolean side) {
    Tone tone = Tone.between(rule.rgb(), field.ground);
    double most = tone.strength() * 1.15 + TOLERANCE;
    int first = Math.max(0, rule.first() - origin);
    int last = Math.min(across - 1, rule.last() - origin);
    for (int a = 0; a < along; a++) {
      boolean crossed =
          !side
              && isInk(first - 1, a, across, stepAcross, stepAlong, most)
              && isInk(last + 1, a, across, stepAcross, stepAlong, most);
      for (int r = first; r <= last; r++) {
        int i = r * stepAcross + a * stepAlong;
        if (field.isGrey(i) && (side || !crossed && field.strength[i] <= most)) {
          ruled[i] = true;
        }
      }
    }
  }

  /** Whether there is ink just beside a line, stronger than its blurred edge would be. */
  private boolean isInk(
      int row, int a, int across, int stepAcross, int stepAlong, double lineStrength) {
    if (row < 0 || row >= across) {
      return false;
    }
    return field.strength[row * stepAcross + a * stepAlong] > Math.max(40, 0.4 * lineStrength);
  }

  private void markTicks(Lattice lattice) {
    int reach = (int) Math.ceil(lattice.tickReach());
    if (reach == 0) {
      return;
    }
    int left = (int) Math.round(lattice.area().left()) - field.left;
    int right = (int) Math.round(lattice.area().right()) - field.left;
    int top = (int) Math.round(lattice.area().top()) - field.top;
    int bottom = (int) Math.round(lattice.area().bottom()) - field.top;
    for (double mark : lattice.levelMarks()) {
      int y = (int) Math.round(mark) - field.top;
      grey(0, y - 1, left + reach + 2, y + 1);
      grey(right - reach - 2, y - 1, field.width - 1, y + 1);
    }
    for (double mark : lattice.uprightMarks()) {
      int x = (int) Math.round(mark) - field.left;
      grey(x - 1, 0, x + 1, top + reach + 2);
      grey(x - 1, bottom - reach - 2, x + 1, field.height - 1);
    }
  }

  /** Beyond the sides there is nothing of a curve but what is drawn over the side itself. */
  private void markOutside(Area area) {
    int left = (int) Math.round(area.left()) - field.left;
    int right = (int) Math.round(area.right()) - field.left;
    int top = (int) Math.round(area.top()) - field.top;
    int bottom = (int) Math.round(area.bottom()) - field.top;
    grey(0, 0, field.width - 1, top);
    grey(0, bottom, field.width - 1, field.height - 1);
    grey(0, 0, left, field.height - 1);
    grey(right, 0, field.width - 1, field.height - 1);
  }

  private void grey(int x0, int y0, int x1, int y1) {
    for (int y = Math.max(0, y0); y <= Math.min(field.height - 1, y1); y++) {
      for (int x = Math.max(0, x0); x <= Math.min(field.width - 1, x1); x++) {
        int i = y * field.width + x;
        if (field.isGrey(i)) {
          ruled[i] = true;
        }
      }
    }
  }
}
