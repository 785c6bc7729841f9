package commonsheet.sheet;

import java.text.Normalizer;
import java.util.Arrays;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.apache.pdfbox.pdmodel.font.encoding.SymbolEncoding;

/**
 * Brings the many code points one printed character can have in a PDF to the one a reader expects.
 */
final class Characters {
  private static final String BULLET = "\u2022";

  /** Radicals U+2E81 to U+2EF3 and, at the same places, the ideographs they stand for. */
  private static final int[] RADICALS =
      ("⺁⺂⺃⺄⺅⺆⺇⺈⺉⺊⺋⺌⺍⺎⺏⺐⺑⺒⺓⺔⺕⺖⺗⺘⺙⺛⺜⺝⺞⺟⺠⺡⺢⺣⺤⺥⺦⺧⺨⺩⺪⺫⺬⺭⺮⺯⺰⺱⺲⺳⺴⺵⺶⺷⺸⺹⺺⺻"
              + "⺼⺽⺾⺿⻀⻁⻂⻃⻄⻅⻆⻇⻈⻉⻊⻋⻌⻍⻎⻏⻐⻑⻒⻓⻔⻕⻖⻗⻘⻙⻚⻛⻜⻝⻞⻟⻠⻡⻢⻣⻤⻥⻦⻧⻨⻩⻪⻫⻬⻭⻮⻯⻰⻱⻲⻳")
          .codePoints()
          .toArray();

  /** From the property Equivalent_Unified_Ideograph of the Unicode Character Database 14.0. */
  private static final int[] IDEOGRAPHS =
      ("厂乛乚乙亻冂𠘨刀刂卜㔾小小兀尣尢𡯂巳幺彑彐忄心扌攵旡日月歺母民氵氺灬爫爫丬牛犭王𤴔目示礻𥫗糹纟罓罒㓁冗𦉫羊𦍌𦍋耂肀聿"
              + "肉𦥑艹艹艹虎衤覀西见角𧢲讠贝𧾷车辶辶辶邑钅長镸长门𨸏阝雨青韦页风飞食𩙿飠饣𩠐马骨鬼鱼鸟卤麦黄黾斉齐歯齿竜龙龜亀龟")
          .codePoints()
          .toArray();

  private Characters() {}

  /**
   * One printed character in its common form.
   *
   * <ul>
   *   <li>private-use codes of the Symbol font (U+F020 to U+F0FE) become what that font prints;
   *   <li>ohm and micro signs become the Greek letters Ω and μ;
   *   <li>radicals and compatibility ideographs, which browsers put for plain ideographs, become
   *       those;
   *   <li>every kind of space becomes a space; soft hyphens, zero-width and control characters go.
   * </ul>
   *
   * Full-width digits and signs and ligatures stay as printed.
   *
   * @param dingbats whether the font prints pictures: its private-use codes become a bullet
   */
  static String normalise(String text, boolean dingbats) {
    if (text.length() == 1 && text.charAt(0) > ' ' && text.charAt(0) < 0x7F) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> append(out, c, dingbats));
    String plain = out.toString();
    return plain.isBlank() && !plain.isEmpty() ? " " : plain;
  }

  private static void append(StringBuilder out, int c, boolean dingbats) {
    if (c >= 0xF020 && c <= 0xF0FF) {
      out.append(dingbats ? BULLET : symbol(c & 0xFF));
    } else if (isSpace(c)) {
      out.append(' ');
    } else if (c >= 0x2E80 && c <= 0x2EFF) {
      int place = Arrays.binarySearch(RADICALS, c);
      out.appendCodePoint(place < 0 ? c : IDEOGRAPHS[place]);
    } else if (isFolded(c)) {
      out.append(Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC));
    } else if (c == 0x2126) {
      out.append('\u03A9');
    } else if (c == 0xB5) {
      out.append('\u03BC');
    } else if (!isSilent(c)) {
      out.appendCodePoint(c);
    }
  }

  /**
   * What the Symbol font prints for a code; letters and digits of a text font behind the same codes
   * stay.
   */
  private static String symbol(int code) {
    if (code == 0x7E) {
      return "~";
    }
    String name = SymbolEncoding.INSTANCE.getName(code);
    String text = GlyphList.getAdobeGlyphList().toUnicode(name);
    return text == null ? "\uFFFD" : normalise(text, false);
  }

  private static boolean isSpace(int c) {
    return (c <= ' ' && c > 0 && Character.isWhitespace(c)) || Character.isSpaceChar(c);
  }

  /**
   * Kangxi Radicals, CJK Compatibility Ideographs and their supplement: NFKC knows their equals.
   */
  private static boolean isFolded(int c) {
    return (c >= 0x2F00 && c <= 0x2FDF)
        || (c >= 0xF900 && c <= 0xFAFF)
        || (c >= 0x2F800 && c <= 0x2FA1F);
  }

  private static boolean isSilent(int c) {
    return c < ' '
        || (c >= 0x7F && c < 0xA0)
        || c == 0xAD
        || Character.getType(c) == Character.FORMAT;
  }

  /** Whether a character belongs to the scripts set without spaces between words. */
  static boolean isIdeographic(int c) {
    return (c >= 0x2E80 && c <= 0x9FFF)
        || (c >= 0xAC00 && c <= 0xD7AF)
        || (c >= 0xF900 && c <= 0xFAFF)
        || (c >= 0xFF00 && c <= 0xFFEF)
        || c >= 0x20000;
  }
}
