package commonsheet.export.plot;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws a plot as SVG. Everything has its looks as attributes, for viewers of files, and a class,
 * by which the style sheet of a page can change them.
 */
public final class PlotSvg {
  private static final double WIDTH = 760;
  private static final double LEFT = 62;
  private static final double RIGHT = 18;
  private static final double TOP = 44;
  private static final double HEIGHT = 340;
  private static final double AXIS = 54;
  private static final double NOTE_LINE = 18;
  private static final int TICKS = 7;
  private static final String FONT = "system-ui, 'Liberation Sans', Helvetica, Arial, sans-serif";
  private static final String INK = "#1f2933";
  private static final String QUIET = "#5b6770";
  private static final String GRID = "#dfe3e6";

  private final Plot plot;
  private final Markup out;
  private final Frame frame;

  private PlotSvg(Plot plot, Markup out) {
    this.plot = plot;
    this.out = out;
    frame =
        new Frame(
            Scale.over(plot.x().low(), plot.x().high(), TICKS),
            Scale.over(plot.y().low(), plot.y().high(), TICKS),
            LEFT,
            TOP,
            WIDTH - LEFT - RIGHT,
            HEIGHT);
  }

  /** The text of an SVG file. */
  public static String file(Plot plot) {
    Markup out = new Markup();
    out.verbatim("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    write(plot, out);
    return out.text("\n").toString();
  }

  /** Writes the svg element, into a page or a file. */
  public static void write(Plot plot, Markup out) {
    new PlotSvg(plot, out).write();
  }

  private void write() {
    Legend legend = new Legend(plot, out, LEFT, frame.bottom() + AXIS + 8, frame.width());
    double foot = frame.bottom() + AXIS + legend.height() + 8;
    begin(foot + plot.note().size() * NOTE_LINE + 8);
    axes();
    guides();
    plot.series().forEach(this::line);
    plot.series().forEach(this::marks);
    keys();
    legend.write();
    note(foot);
    out.close();
  }

  private void begin(double height) {
    String title = plot.id() + "-title";
    String description = plot.id() + "-description";
    out.open("svg").with("xmlns", "http://www.w3.org/2000/svg").with("class", "plot");
    out.with("viewBox", "0 0 " + Frame.number(WIDTH) + ' ' + Frame.number(height));
    out.with("width", WIDTH).with("height", height);
    out.with("role", "img").with("aria-labelledby", title + ' ' + description);
    out.with("font-family", FONT).with("font-size", "15");
    out.open("title").with("id", title).text(plot.title()).close();
    out.open("desc").with("id", description).text(plot.description()).close();
    out.empty("rect").with("class", "paper").with("width", "100%").with("height", "100%");
    out.with("fill", "#ffffff").text("\n");
  }

  private void axes() {
    out.open("g").with("class", "axes");
    for (BigDecimal tick : frame.y().ticks()) {
      double y = frame.atY(tick.doubleValue());
      rule(frame.left(), y, frame.right(), y, "grid", GRID);
      label(frame.y().text(tick), frame.left() - 9, y + 4.5, "end", "tick", QUIET);
    }
    for (BigDecimal tick : frame.x().ticks()) {
      double x = frame.atX(tick.doubleValue());
      rule(x, frame.bottom(), x, frame.bottom() + 5, "axis", QUIET);
      label(frame.x().text(tick), x, frame.bottom() + 21, "middle", "tick", QUIET);
    }
    rule(frame.left(), frame.bottom(), frame.right(), frame.bottom(), "axis", QUIET);
    label(plot.y().title(), 8, 20, "start", "axis-title", INK);
    label(plot.x().title(), frame.right(), frame.bottom() + 44, "end", "axis-title", INK);
    out.closeLine();
  }

  private void guides() {
    double text = frame.top() - 2;
    for (Plot.Guide guide : plot.guides()) {
      double x = frame.atX(guide.x());
      boolean rightHalf = x > frame.left() + frame.width() / 2;
      out.empty("line")
          .with("class", "guide")
          .with("x1", x)
          .with("x2", x)
          .with("y1", frame.top() - 8)
          .with("y2", frame.bottom())
          .with("stroke", QUIET)
          .with("stroke-width", "1.2")
          .with("stroke-dasharray", "4 4");
      label(
          guide.text(),
          x + (rightHalf ? -6 : 6),
          text,
          rightHalf ? "end" : "start",
          "guide-text",
          QUIET);
      text += NOTE_LINE;
      out.text("\n");
    }
  }

  private void line(Plot.Series series) {
    if (series.line().isEmpty()) {
      return;
    }
    Look look = series.look();
    StringBuilder path = new StringBuilder();
    for (Plot.Point point : series.line()) {
      path.append(path.length() == 0 ? 'M' : 'L')
          .append(Frame.number(frame.atX(point.x())))
          .append(',')
          .append(Frame.number(frame.atY(point.y())));
    }
    out.empty("path")
        .with("class", "line " + look.styleClass())
        .with("d", path.toString())
        .with("fill", "none")
        .with("stroke", look.colour())
        .with("stroke-width", "2.2")
        .with("stroke-linejoin", "round")
        .with("stroke-dasharray", look.dash());
    out.text("\n");
  }

  private void marks(Plot.Series series) {
    Look look = series.look();
    for (Plot.Point mark : series.marks()) {
      double x = frame.atX(mark.x());
      if (mark.low() != null && mark.high() != null) {
        out.empty("path")
            .with("class", "bar " + look.styleClass())
            .with("d", bar(x, frame.atY(mark.low()), frame.atY(mark.high())))
            .with("fill", "none")
            .with("stroke", look.colour())
            .with("stroke-width", "1.3");
      }
      Marker.write(out, look, x, frame.atY(mark.y()));
    }
    out.text("\n");
  }

  private static String bar(double x, double low, double high) {
    String side = Frame.number(x - 4) + ',';
    return "M"
        + side
        + Frame.number(low)
        + "h8M"
        + side
        + Frame.number(high)
        + "h8M"
        + Frame.number(x)
        + ','
        + Frame.number(low)
        + "V"
        + Frame.number(high);
  }

  private void keys() {
    KeyPlaces places = new KeyPlaces(frame);
    List<Plot.Series> alone = new ArrayList<>();
    for (Plot.Series series : plot.series()) {
      if (series.line().size() > 1) {
        Marker.key(out, series, places.along(series.line()));
      } else if (!series.marks().isEmpty()) {
        places.keepClear(series.marks().get(0));
        alone.add(series);
      }
    }
    for (Plot.Series series : alone) {
      Marker.key(out, series, places.beside(series.marks().get(0)));
    }
    out.text("\n");
  }

  private void note(double top) {
    double y = top;
    for (String sentence : plot.note()) {
      y += NOTE_LINE;
      label(sentence, 14, y, "start", "note", QUIET);
    }
  }

  private void rule(double x1, double y1, double x2, double y2, String kind, String colour) {
    out.empty("line")
        .with("class", kind)
        .with("x1", x1)
        .with("y1", y1)
        .with("x2", x2)
        .with("y2", y2)
        .with("stroke", colour);
  }

  private void label(String text, double x, double y, String anchor, String kind, String colour) {
    out.open("text")
        .with("class", kind)
        .with("x", x)
        .with("y", y)
        .with("text-anchor", anchor)
        .with("fill", colour)
        .text(text)
        .close();
  }
}
