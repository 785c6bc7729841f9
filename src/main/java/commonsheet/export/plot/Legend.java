package commonsheet.export.plot;

/** Names the series below a plot, in two columns. */
final class Legend {
  private static final double ROW = 25;
  private static final double SAMPLE = 44;

  /** Average width of a character at the legend's size, in user units, on the wide side. */
  private static final double CHARACTER = 8.2;

  private final Plot plot;
  private final Markup out;
  private final double left;
  private final double top;
  private final double width;

  Legend(Plot plot, Markup out, double left, double top, double width) {
    this.plot = plot;
    this.out = out;
    this.left = left;
    this.top = top;
    this.width = width;
  }

  double height() {
    return rows() * ROW + 10;
  }

  private int rows() {
    return (plot.series().size() + 1) / 2;
  }

  void write() {
    out.open("g").with("class", "legend");
    for (int i = 0; i < plot.series().size(); i++) {
      double x = left + (i < rows() ? 0 : width / 2);
      entry(plot.series().get(i), x, top + (i % Math.max(1, rows())) * ROW + ROW / 2);
    }
    out.closeLine();
  }

  private void entry(Plot.Series series, double x, double y) {
    Look look = series.look();
    Marker.key(out, series, x + KeyPlaces.RADIUS, y);
    double from = x + 2 * KeyPlaces.RADIUS + 8;
    if (!series.line().isEmpty()) {
      out.empty("line")
          .with("class", "line " + look.styleClass())
          .with("x1", from)
          .with("x2", from + SAMPLE)
          .with("y1", y)
          .with("y2", y)
          .with("stroke", look.colour())
          .with("stroke-width", "2.2")
          .with("stroke-dasharray", look.dash());
    }
    Marker.write(out, look, from + SAMPLE / 2, y);
    double text = from + SAMPLE + 8;
    int room = (int) ((x + width / 2 - text - 10) / CHARACTER);
    out.open("text")
        .with("class", "legend-text")
        .with("x", text)
        .with("y", y + 5)
        .with("fill", "#1f2933")
        .text(shortened(series.name() + (series.unsure() ? " ?" : ""), room))
        .close();
  }

  private static String shortened(String name, int room) {
    return name.codePointCount(0, name.length()) <= room
        ? name
        : name.substring(0, name.offsetByCodePoints(0, room - 1)) + '…';
  }
}
