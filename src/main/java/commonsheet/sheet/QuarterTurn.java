package commonsheet.sheet;

import java.util.List;

/**
 * Turns a page clockwise by quarters of a full turn.
 *
 * @param quarters 0 to 3
 * @param width of the page before, in points
 * @param height of the page before, in points
 */
record QuarterTurn(int quarters, double width, double height) {
  /** The page after it. */
  Box page() {
    return place(new Box(0, 0, width, height));
  }

  /** Where a box of the page comes to lie. */
  Box place(Box box) {
    return switch (quarters) {
      case 1 -> new Box(height - box.bottom(), box.x(), box.height(), box.width());
      case 2 -> new Box(width - box.right(), height - box.bottom(), box.width(), box.height());
      case 3 -> new Box(box.y(), width - box.right(), box.height(), box.width());
      default -> box;
    };
  }

  List<Box> place(List<Box> boxes) {
    return boxes.stream().map(this::place).toList();
  }

  Rulings place(Rulings rulings) {
    return Rulings.merged(
        rulings.all().stream().map(ruling -> Ruling.of(place(ruling.box()))).toList());
  }
}
