package commonsheet.export.plot;

/** Markers and numbers of series. */
final class Marker {
  private Marker() {}

  /** The marker of a look at a place. */
  static void write(Markup out, Look look, double x, double y) {
    out.empty("path")
        .with("class", "mark " + look.styleClass())
        .with("transform", "translate(" + Frame.number(x) + ' ' + Frame.number(y) + ')')
        .with("d", look.marker())
        .with("fill", look.colour())
        .with("stroke", look.colour())
        .with("stroke-width", "1.8");
  }

  /** The number of a series in a ring, with a pointer where it stands off its mark. */
  static void key(Markup out, Plot.Series series, KeyPlaces.Key place) {
    Look look = series.look();
    if (place.markX() != null) {
      out.empty("line")
          .with("class", "bar " + look.styleClass())
          .with("x1", place.markX())
          .with("y1", place.markY())
          .with("x2", place.x())
          .with("y2", place.y())
          .with("stroke", look.colour());
    }
    key(out, series, place.x(), place.y());
  }

  static void key(Markup out, Plot.Series series, double x, double y) {
    Look look = series.look();
    out.empty("circle")
        .with("class", "key " + look.styleClass())
        .with("cx", x)
        .with("cy", y)
        .with("r", KeyPlaces.RADIUS)
        .with("fill", "#ffffff")
        .with("stroke", look.colour())
        .with("stroke-width", "1.6");
    out.open("text")
        .with("class", "key-text")
        .with("x", x)
        .with("y", y + 4)
        .with("text-anchor", "middle")
        .with("font-size", "12")
        .with("font-weight", "600")
        .with("fill", "#1f2933")
        .text(Integer.toString(series.key()))
        .close();
  }
}
