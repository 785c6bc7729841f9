package commonsheet.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.fontbox.cmap.CMapParser;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;

/** What the codes of the fonts of a page stand for, remembered per font. */
final class FontTexts {
  /**
   * Font weight from which a font is bold (CSS and PDF 32000-1 table 122: 400 normal, 700 bold).
   */
  private static final float BOLD_WEIGHT = 600;

  /** The size of a letter in a font that draws its letters itself, when it does not state one. */
  private static final double UNSTATED = 1;

  private static final class Known {
    private final Map<Integer, String> texts = new HashMap<>();
    private boolean symbol;
    private boolean dingbats;
    private boolean bold;
    private double scale;
  }

  private final IdentityHashMap<PDFont, Known> fonts = new IdentityHashMap<>();

  /** Any mapping of one code makes the library fill its table of all codes of two bytes. */
  private static final String SMALLEST_MAPPING = "1 beginbfchar <0041> <0041> endbfchar ";

  /** Makes the library fill its tables of characters now instead of on first use. */
  static void prepare() {
    GlyphList.getAdobeGlyphList();
    byte[] mapping = SMALLEST_MAPPING.getBytes(StandardCharsets.US_ASCII);
    try {
      new CMapParser().parse(new ByteArrayInputStream(mapping));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The character of a code: a space for any space, "" for none, U+FFFD where the file does not
   * say.
   */
  String text(PDFont font, int code) throws IOException {
    Known known = known(font);
    String text = known.texts.get(code);
    if (text == null) {
      text = read(font, code, known);
      known.texts.put(code, text);
    }
    return text;
  }

  private static String read(PDFont font, int code, Known known) throws IOException {
    String unicode = font.toUnicode(code, GlyphList.getAdobeGlyphList());
    if (unicode == null && font instanceof PDSimpleFont && !(font instanceof PDType3Font)) {
      unicode = String.valueOf((char) (known.symbol || known.dingbats ? 0xF000 | code : code));
    }
    if (unicode == null) {
      return "\uFFFD";
    }
    return Characters.normalise(unicode, known.dingbats);
  }

  boolean isBold(PDFont font) throws IOException {
    return known(font).bold;
  }

  /**
   * By what to multiply the nominal size of a font: 1 unless it draws its letters in a scale of its
   * own.
   */
  double scale(PDFont font) throws IOException {
    return known(font).scale;
  }

  private Known known(PDFont font) throws IOException {
    Known known = fonts.get(font);
    if (known == null) {
      known = new Known();
      String name = font.getName() == null ? "" : font.getName().toLowerCase(Locale.ROOT);
      PDFontDescriptor descriptor = font.getFontDescriptor();
      known.symbol = name.contains("symbol");
      known.dingbats = name.contains("dings") || name.contains("dingbats");
      known.bold =
          name.contains("bold")
              || name.contains("black")
              || name.contains("heavy")
              || (descriptor != null
                  && (descriptor.isForceBold() || descriptor.getFontWeight() >= BOLD_WEIGHT));
      known.scale = font instanceof PDType3Font type3 ? scale(type3) : 1;
      fonts.put(font, known);
    }
    return known;
  }

  private static double scale(PDType3Font font) throws IOException {
    BoundingBox box = font.getBoundingBox();
    double height = box == null ? 0 : box.getHeight() * Math.abs(font.getFontMatrix().getScaleY());
    return height > 0.2 && height < 5 ? height : UNSTATED;
  }
}
