package commonsheet.sheet;

import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.PDTextState;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * Goes once through a page's content, within the limits, and tells what of it can be seen: hidden
 * layers and ink too faint to see are left out.
 */
abstract class PageWalker extends PDFGraphicsStreamEngine {
  /** Operators and characters between two looks at the clock. */
  private static final int CLOCK_EVERY = 1024;

  /** Opacity below which nothing can be seen. */
  private static final double INVISIBLE = 0.05;

  private final PDPage page;
  private final SheetSettings limits;
  private final PDOptionalContentProperties layers;
  private final FontTexts fonts = new FontTexts();
  private final long deadline;

  private final List<Subpath> path = new ArrayList<>();
  private boolean clipping;
  private int pathPieces;
  private int glyphs;
  private int steps;
  private int hiddenDepth;
  private List<Path2D> clipsSeen;
  private int clipsCounted;
  private Box clip;

  /**
   * @param layers the file's layers, of which hidden ones are left out; null if it has none
   */
  PageWalker(PDPage page, PDOptionalContentProperties layers, SheetSettings limits) {
    super(page);
    this.page = page;
    this.layers = layers;
    this.limits = limits;
    this.deadline = System.nanoTime() + limits.secondsPerPage() * 1_000_000_000L;
  }

  /** A character was drawn, visible or written for copying only. */
  abstract void glyph(Glyph glyph, Box open);

  /** The line of a path was drawn. */
  abstract void stroke(List<Subpath> path, Box open);

  /** The inside of a path was painted. */
  abstract void fill(List<Subpath> path, Box open);

  /** Everything left open was painted with a run of colours. */
  abstract void shade(Box open);

  /** A picture was shown. */
  abstract void picture(PDImage image, Box where, Box open);

  /**
   * Goes through a page, form fields and notes on it included.
   *
   * @throws IOException if the content cannot be read
   * @throws PageLimitException if it asks for more than the limits allow
   */
  final void walk() throws IOException {
    ContentCheck.check(page, limits.maximumStreamBytes());
    processPage(page);
    for (PDAnnotation annotation : page.getAnnotations()) {
      if (!annotation.isHidden() && !annotation.isNoView()) {
        showAnnotation(annotation);
      }
    }
  }

  @Override
  protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
    checkClock();
    super.processOperator(operator, operands);
  }

  private void checkClock() {
    if (++steps % CLOCK_EVERY == 0 && System.nanoTime() > deadline) {
      throw new PageLimitException("takes more than " + limits.secondsPerPage() + " seconds");
    }
  }

  @Override
  protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement)
      throws IOException {
    checkClock();
    if (++glyphs > limits.maximumGlyphs()) {
      throw new PageLimitException("holds more than " + limits.maximumGlyphs() + " characters");
    }
    String text = hiddenDepth > 0 ? "" : fonts.text(font, code);
    if (text.isEmpty()) {
      return;
    }
    double across = font.isVertical() ? 1 : displacement.getX();
    double a = matrix.getValue(0, 0);
    double b = matrix.getValue(0, 1);
    double size = Math.hypot(matrix.getValue(1, 0), matrix.getValue(1, 1)) * fonts.scale(font);
    PDTextState state = getGraphicsState().getTextState();
    double spacing =
        state.getFontSize() == 0
            ? 0
            : state.getCharacterSpacing() / state.getFontSize() * Math.hypot(a, b);
    int mode = state.getRenderingMode().intValue();
    boolean hidden = mode == 3 || mode == 7;
    boolean bold = fonts.isBold(font) || mode == 2;
    double light =
        Lightness.of(
            mode == 1
                ? getGraphicsState().getStrokingColor()
                : getGraphicsState().getNonStrokingColor());
    Glyph glyph =
        new Glyph(
            text,
            matrix.getTranslateX(),
            matrix.getTranslateY(),
            across * a,
            across * b,
            spacing,
            size,
            bold,
            light,
            hidden);
    boolean faint = getGraphicsState().getNonStrokeAlphaConstant() < INVISIBLE;
    if (!faint) {
      glyph(glyph, clip());
    }
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    moveTo((float) p0.getX(), (float) p0.getY());
    lineTo((float) p1.getX(), (float) p1.getY());
    lineTo((float) p2.getX(), (float) p2.getY());
    lineTo((float) p3.getX(), (float) p3.getY());
    closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    Subpath start = new Subpath();
    start.lineTo(x, y);
    path.add(start);
  }

  @Override
  public void lineTo(float x, float y) {
    countPiece();
    current(x, y).lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    countPiece();
    bend(current(x1, y1), x1, y1, x2, y2, x3, y3);
  }

  /** Adds a curve to a path; here by its end point, since its course matters to no word. */
  void bend(Subpath to, double x1, double y1, double x2, double y2, double x3, double y3) {
    to.curveTo(x3, y3);
  }

  private Subpath current(float x, float y) {
    if (path.isEmpty()) {
      moveTo(x, y);
    }
    return path.get(path.size() - 1);
  }

  private void countPiece() {
    if (++pathPieces > limits.maximumPathPieces()) {
      throw new PageLimitException(
          "draws more than " + limits.maximumPathPieces() + " lines and curves");
    }
  }

  @Override
  public Point2D getCurrentPoint() {
    if (path.isEmpty()) {
      return new Point2D.Float();
    }
    Subpath last = path.get(path.size() - 1);
    return new Point2D.Float((float) last.lastX(), (float) last.lastY());
  }

  @Override
  public void closePath() {
    if (!path.isEmpty()) {
      path.get(path.size() - 1).close();
    }
  }

  @Override
  public void clip(int windingRule) {
    clipping = true;
  }

  @Override
  public void endPath() {
    if (clipping && !path.isEmpty()) {
      Box bounds = Box.around(path.stream().map(Subpath::bounds).toList());
      getGraphicsState().intersectClippingPath(new GeneralPath(rectangle(bounds)));
    }
    clipping = false;
    path.clear();
  }

  @Override
  public void strokePath() {
    stroke();
    endPath();
  }

  @Override
  public void fillPath(int windingRule) {
    fill();
    endPath();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    fill();
    stroke();
    endPath();
  }

  @Override
  public void shadingFill(COSName shadingName) {
    if (hiddenDepth == 0) {
      shade(clip());
    }
  }

  @Override
  public void drawImage(PDImage image) {
    if (hiddenDepth == 0) {
      Matrix ctm = getGraphicsState().getCurrentTransformationMatrix();
      Rectangle2D bounds =
          ctm.createAffineTransform()
              .createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1))
              .getBounds2D();
      picture(image, box(bounds), clip());
    }
  }

  private void stroke() {
    if (hiddenDepth == 0 && getGraphicsState().getAlphaConstant() >= INVISIBLE) {
      stroke(path, clip());
    }
  }

  private void fill() {
    if (hiddenDepth == 0 && getGraphicsState().getNonStrokeAlphaConstant() >= INVISIBLE) {
      fill(path, clip());
    }
  }

  /** The box all clip paths leave open, in the page's own coordinates. */
  private Box clip() {
    List<Path2D> clips = getGraphicsState().getCurrentClippingPaths();
    if (clips != clipsSeen || clips.size() != clipsCounted) {
      Rectangle2D open = null;
      for (Path2D one : clips) {
        Rectangle2D bounds = one.getBounds2D();
        open = open == null ? bounds : open.createIntersection(bounds);
      }
      clip = box(open);
      clipsSeen = clips;
      clipsCounted = clips.size();
    }
    return clip;
  }

  private static Box box(Rectangle2D r) {
    return new Box(r.getX(), r.getY(), Math.max(0, r.getWidth()), Math.max(0, r.getHeight()));
  }

  private static Rectangle2D rectangle(Box b) {
    return new Rectangle2D.Double(b.x(), b.y(), b.width(), b.height());
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    if (hiddenDepth > 0 || (COSName.OC.equals(tag) && isHiddenLayer(properties))) {
      hiddenDepth++;
    }
  }

  @Override
  public void endMarkedContentSequence() {
    hiddenDepth = Math.max(0, hiddenDepth - 1);
  }

  private boolean isHiddenLayer(COSDictionary properties) {
    return layers != null
        && properties != null
        && PDPropertyList.create(properties) instanceof PDOptionalContentGroup layer
        && !layers.isGroupEnabled(layer);
  }
}
