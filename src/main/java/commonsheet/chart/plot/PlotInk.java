package commonsheet.chart.plot;

/** What a plot is made of. */
public enum PlotInk {
  /** Paths of the file. */
  PATHS,
  /** Pixels of a picture. */
  PIXELS
}
