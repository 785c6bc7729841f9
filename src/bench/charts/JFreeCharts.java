import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawerDefaultFonts;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.annotations.XYTitleAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/** Draws the charts meant for JFreeChart, as PDF by PDFBox or as pictures. Argument: OUT. */
public final class JFreeCharts {
  private static final String FONTS = "/usr/share/fonts/truetype/liberation";

  private JFreeCharts() {}

  public static void main(String[] arguments) throws Exception {
    // Turned words stay words, instead of becoming outlines.
    TextUtils.setUseDrawRotatedStringWorkaround(false);
    File work = new File(arguments[0], "work");
    for (JsonNode spec : new ObjectMapper().readTree(new File(work, "specs.json"))) {
      if (!spec.get("renderer").asText().equals("jfree")) {
        continue;
      }
      String name = spec.get("name").asText();
      if (spec.get("form").asText().equals("vector")) {
        drawPaths(spec, new File(work, name + ".pdf"));
      } else {
        drawPixels(spec, new File(work, name + ".png"));
      }
    }
  }

  private static void drawPaths(JsonNode spec, File file) throws Exception {
    float width = (float) spec.get("width").asDouble();
    float height = (float) spec.get("height").asDouble();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(width, height));
      document.addPage(page);
      PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
      graphics.setFontTextDrawer(fonts(spec));
      chart(spec).draw(graphics, new Rectangle2D.Double(0, 0, width, height));
      graphics.dispose();
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.drawForm(graphics.getXFormObject());
      }
      document.save(file);
    }
  }

  /** The standard fonts of PDF in some charts, embedded ones in others. */
  private static PdfBoxGraphics2DFontTextDrawer fonts(JsonNode spec) {
    if (!isEmbedded(spec)) {
      return new PdfBoxGraphics2DFontTextDrawerDefaultFonts();
    }
    PdfBoxGraphics2DFontTextDrawer drawer = new PdfBoxGraphics2DFontTextDrawer();
    for (String face : List.of("Sans-Regular", "Sans-Bold", "Serif-Regular", "Serif-Bold")) {
      drawer.registerFont(new File(FONTS, "Liberation" + face + ".ttf"));
    }
    return drawer;
  }

  private static boolean isEmbedded(JsonNode spec) {
    return spec.get("form").asText().equals("vector") && spec.get("size").asDouble() < 7.5;
  }

  private static void drawPixels(JsonNode spec, File file) throws Exception {
    double scale = spec.get("dpi").asDouble() / 72;
    double width = spec.get("width").asDouble();
    double height = spec.get("height").asDouble();
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(width * scale),
            (int) Math.round(height * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.scale(scale, scale);
    chart(spec).draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    graphics.dispose();
    ImageIO.write(image, "png", file);
  }

  private static JFreeChart chart(JsonNode spec) {
    float size = (float) spec.get("size").asDouble();
    boolean sans = spec.get("font").asText().equals("sans");
    String family =
        isEmbedded(spec)
            ? (sans ? "Liberation Sans" : "Liberation Serif")
            : (sans ? "SansSerif" : "Serif");
    Font font = new Font(family, Font.PLAIN, 1).deriveFont(size);
    JsonNode axes = spec.get("axes");
    XYPlot plot = new XYPlot();
    plot.setDomainAxis(axis(axes.get("x"), font, spec));
    plot.setRangeAxis(0, axis(axes.get("y"), font, spec));
    if (axes.has("y2")) {
      plot.setRangeAxis(1, axis(axes.get("y2"), font, spec));
      plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
      plot.mapDatasetToRangeAxis(1, 1);
    }
    curves(spec, plot);
    grid(spec, plot);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setOutlinePaint(spec.get("frame").asText().equals("box") ? Color.BLACK : null);
    plot.setOutlineStroke(new BasicStroke(0.6f));
    annotations(spec, plot, font);
    JFreeChart chart = new JFreeChart(null, font, plot, false);
    if (!spec.get("heading").isNull()) {
      chart.setTitle(spec.get("heading").asText());
      chart.getTitle().setFont(font.deriveFont(Font.BOLD, size * 1.15f));
    }
    chart.setBackgroundPaint(Color.WHITE);
    legend(spec, chart, plot, font);
    return chart;
  }

  private static NumberAxis axis(JsonNode a, Font font, JsonNode spec) {
    NumberAxis axis = new NumberAxis(a.get("title").asText());
    axis.setRange(a.get("low").asDouble(), a.get("high").asDouble());
    int digits = a.get("digits").asInt();
    String pattern = digits == 0 ? "0" : "0." + "0".repeat(digits);
    axis.setTickUnit(
        new NumberTickUnit(
            a.get("step").asDouble(),
            new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT))));
    axis.setTickLabelFont(font);
    axis.setLabelFont(font);
    axis.setTickLabelPaint(Color.BLACK);
    axis.setAxisLinePaint(Color.BLACK);
    axis.setTickMarkPaint(Color.BLACK);
    boolean in = spec.get("ticks").asText().equals("in");
    axis.setTickMarkInsideLength(in ? 3 : 0);
    axis.setTickMarkOutsideLength(in ? 0 : 3);
    if (a.get("minor").asInt() > 0) {
      axis.setMinorTickCount(a.get("minor").asInt());
      axis.setMinorTickMarksVisible(true);
      axis.setMinorTickMarkInsideLength(in ? 1.5f : 0);
      axis.setMinorTickMarkOutsideLength(in ? 0 : 1.5f);
    }
    return axis;
  }

  private static void curves(JsonNode spec, XYPlot plot) {
    for (int side = 0; side < 2; side++) {
      DefaultXYDataset data = new DefaultXYDataset();
      int[] every = new int[spec.get("curves").size()];
      XYLineAndShapeRenderer renderer =
          new XYLineAndShapeRenderer(true, false) {
            @Override
            public boolean getItemShapeVisible(int series, int item) {
              return every[series] > 0 && item % every[series] == 0;
            }
          };
      int n = 0;
      for (JsonNode c : spec.get("curves")) {
        if (c.get("right").asBoolean() != (side == 1)) {
          continue;
        }
        double[][] points = new double[2][c.get("x").size()];
        for (int k = 0; k < points[0].length; k++) {
          points[0][k] = c.get("x").get(k).asDouble();
          points[1][k] = c.get("y").get(k).asDouble();
        }
        data.addSeries(c.get("label").isNull() ? " " : c.get("label").asText(), points);
        style(renderer, n, c);
        every[n] = c.get("marker").isNull() ? 0 : Math.max(1, points[0].length / 14);
        n++;
      }
      renderer.setDrawSeriesLineAsPath(true);
      if (n > 0) {
        plot.setDataset(side, data);
        plot.setRenderer(side, renderer);
      }
    }
  }

  private static void style(XYLineAndShapeRenderer renderer, int n, JsonNode c) {
    float width = (float) c.get("width").asDouble();
    renderer.setSeriesPaint(n, Color.decode(c.get("colour").asText()));
    if (c.get("dash").isNull()) {
      renderer.setSeriesStroke(
          n, new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    } else {
      float[] dash = new float[c.get("dash").size()];
      for (int k = 0; k < dash.length; k++) {
        dash[k] = (float) c.get("dash").get(k).asDouble();
      }
      renderer.setSeriesStroke(
          n, new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0));
    }
    if (!c.get("marker").isNull()) {
      String marker = c.get("marker").asText();
      renderer.setSeriesShape(n, shape(marker));
      renderer.setSeriesShapesFilled(n, !marker.startsWith("open"));
    }
  }

  private static Shape shape(String marker) {
    Path2D path = new Path2D.Double();
    double r = 2.4;
    switch (marker) {
      case "circle", "opencircle":
        return new Ellipse2D.Double(-r, -r, 2 * r, 2 * r);
      case "square", "opensquare":
        return new Rectangle2D.Double(-r, -r, 2 * r, 2 * r);
      case "triangle":
        path.moveTo(0, -r);
        path.lineTo(r, r);
        path.lineTo(-r, r);
        path.closePath();
        return path;
      case "diamond":
        path.moveTo(0, -r * 1.2);
        path.lineTo(r * 1.2, 0);
        path.lineTo(0, r * 1.2);
        path.lineTo(-r * 1.2, 0);
        path.closePath();
        return path;
      case "cross":
        return new BasicStroke(0.8f)
            .createStrokedShape(lines(path, new double[][] {{-r, -r, r, r}, {-r, r, r, -r}}));
      default:
        return new BasicStroke(0.8f)
            .createStrokedShape(lines(path, new double[][] {{-r, 0, r, 0}, {0, -r, 0, r}}));
    }
  }

  private static Path2D lines(Path2D path, double[][] ends) {
    for (double[] e : ends) {
      path.moveTo(e[0], e[1]);
      path.lineTo(e[2], e[3]);
    }
    return path;
  }

  private static void grid(JsonNode spec, XYPlot plot) {
    String grid = spec.get("grid").asText();
    plot.setRangeGridlinesVisible(!grid.equals("none"));
    plot.setDomainGridlinesVisible(grid.equals("both"));
    float grey = (float) spec.get("gridGrey").asDouble();
    float width = (float) spec.get("gridWidth").asDouble();
    BasicStroke stroke =
        spec.get("gridDash").isNull()
            ? new BasicStroke(width)
            : new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 10, new float[] {2, 2}, 0);
    Color colour = new Color(grey, grey, grey);
    plot.setRangeGridlinePaint(colour);
    plot.setDomainGridlinePaint(colour);
    plot.setRangeGridlineStroke(stroke);
    plot.setDomainGridlineStroke(stroke);
  }

  private static void annotations(JsonNode spec, XYPlot plot, Font font) {
    for (JsonNode l : spec.get("leaders")) {
      plot.addAnnotation(
          new XYLineAnnotation(
              l.get(0).asDouble(),
              l.get(1).asDouble(),
              l.get(2).asDouble(),
              l.get(3).asDouble(),
              new BasicStroke(0.5f),
              Color.BLACK));
    }
    for (JsonNode t : spec.get("texts")) {
      XYTextAnnotation text =
          new XYTextAnnotation(
              t.get("text").asText(), t.get("x").asDouble(), t.get("y").asDouble());
      text.setFont(font);
      text.setPaint(Color.decode(t.get("colour").asText()));
      text.setTextAnchor(
          t.get("align").asText().equals("centre") ? TextAnchor.CENTER : TextAnchor.CENTER_RIGHT);
      plot.addAnnotation(text);
    }
  }

  private static void legend(JsonNode spec, JFreeChart chart, XYPlot plot, Font font) {
    String place = spec.get("legend").asText();
    if (!place.equals("inside") && !place.equals("right") && !place.equals("below")) {
      return;
    }
    LegendTitle legend = new LegendTitle(plot);
    legend.setItemFont(font);
    if (spec.get("legendFrame").asBoolean()) {
      legend.setFrame(new BlockBorder(0.5, 0.5, 0.5, 0.5));
    }
    legend.setBackgroundPaint(Color.WHITE);
    if (place.equals("inside")) {
      String corner = spec.get("corner").asText();
      double x = corner.contains("left") ? 0.02 : 0.98;
      double y = corner.contains("bottom") ? 0.02 : 0.98;
      legend.setPosition(RectangleEdge.RIGHT);
      plot.addAnnotation(
          new XYTitleAnnotation(
              x,
              y,
              legend,
              RectangleAnchor.valueOf(
                  (corner.contains("bottom") ? "BOTTOM_" : "TOP_")
                      + (corner.contains("left") ? "LEFT" : "RIGHT"))));
    } else {
      legend.setPosition(place.equals("right") ? RectangleEdge.RIGHT : RectangleEdge.BOTTOM);
      chart.addLegend(legend);
    }
  }
}
