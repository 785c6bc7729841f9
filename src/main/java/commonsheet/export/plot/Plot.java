package commonsheet.export.plot;

import java.util.List;

/**
 * A chart of several series over two linear axes.
 *
 * @param id unique in a document, letters and hyphens; also its file's name
 * @param title what it shows
 * @param description the same at more length, for those who cannot see it and as its caption
 * @param x the horizontal axis
 * @param y the vertical axis
 * @param series in the order of the legend
 * @param guides vertical lines that mark places of the horizontal axis
 * @param note printed below the legend, such as the condition and the sources
 */
public record Plot(
    String id,
    String title,
    String description,
    Axis x,
    Axis y,
    List<Series> series,
    List<Guide> guides,
    List<String> note) {
  public Plot {
    series = List.copyOf(series);
    guides = List.copyOf(guides);
    note = List.copyOf(note);
  }

  /** The same chart with other sentences below it. */
  public Plot noted(List<String> sentences) {
    return new Plot(id, title, description, x, y, series, guides, sentences);
  }

  /**
   * What an axis shows and how far it reaches at least; it ends at round numbers.
   *
   * @param title with its unit
   */
  public record Axis(String title, double low, double high) {}

  /**
   * A place on the horizontal axis.
   *
   * @param text what is there
   */
  public record Guide(double x, String text) {}

  /**
   * A place, with the ends of what the height may be where they are known.
   *
   * @param low in the unit of the vertical axis, or null
   * @param high in the unit of the vertical axis, or null
   */
  public record Point(double x, double y, Double low, Double high) {
    /** A place without bounds. */
    public static Point of(double x, double y) {
      return new Point(x, y, null, null);
    }
  }

  /**
   * One cell's part of a chart.
   *
   * @param key the number that stands for it, in the chart and beside it; from 1
   * @param look what tells it from the others
   * @param name for the legend
   * @param line the points joined, ascending in x; none where only marks are shown
   * @param marks places that are set off: what the line rests on
   * @param unsure shown with a question mark
   */
  public record Series(
      int key, Look look, String name, List<Point> line, List<Point> marks, boolean unsure) {
    public Series {
      line = List.copyOf(line);
      marks = List.copyOf(marks);
    }
  }
}
