package commonsheet.chart.reference;

import commonsheet.sheet.Point;

/** A value over the places of a page: offset + across · x + down · y. */
record Plane(double offset, double across, double down) {
  double at(Point place) {
    return offset + across * place.x() + down * place.y();
  }

  /** How much it changes over one point in its steepest direction. */
  double steepness() {
    return Math.hypot(across, down);
  }
}
