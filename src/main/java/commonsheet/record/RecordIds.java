package commonsheet.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Names for records: short, readable, and safe as a file name on any system. */
public final class RecordIds {
  /** The longest id; leaves room for a suffix within the 255 bytes of common file systems. */
  public static final int MAX_LENGTH = 80;

  /** A maker's full company name would leave no room for the model. */
  private static final int MAX_MAKER_LENGTH = 40;

  /** Hexadecimal digits that tell names apart which are shortened or have no Latin letters. */
  private static final int HASH_LENGTH = 8;

  /** Letters and signs that do not decompose, and signs that tell models apart. */
  private static final Map<String, String> LATIN =
      Map.ofEntries(
          Map.entry("ß", "ss"),
          Map.entry("æ", "ae"),
          Map.entry("œ", "oe"),
          Map.entry("ø", "o"),
          Map.entry("ł", "l"),
          Map.entry("đ", "d"),
          Map.entry("ð", "d"),
          Map.entry("þ", "th"),
          Map.entry("ı", "i"),
          Map.entry("μ", "u"),
          Map.entry("+", "-plus-"));

  /** Device names that Windows does not allow as file names, whatever the extension. */
  private static final Set<String> RESERVED =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

  private RecordIds() {}

  /**
   * The id of a record: maker and model, or the file's name where the sheet does not name the
   * model.
   *
   * @param maker as printed, or null
   * @param model as printed, or null
   * @param fallbackFileName the sheet's file, with or without extension
   * @return lower-case ASCII letters, digits and single hyphens; 1 to {@value #MAX_LENGTH}
   *     characters; the same for the same names
   */
  public static String of(String maker, String model, String fallbackFileName) {
    String modelPart = slug(model);
    String id = modelPart.isEmpty() ? slug(stem(fallbackFileName)) : join(maker(maker), modelPart);
    String all = maker + "\n" + model + "\n" + fallbackFileName;
    if (id.isEmpty()) {
      return "cell-" + hash(all);
    }
    if (id.length() > MAX_LENGTH) {
      return cut(id, MAX_LENGTH - HASH_LENGTH - 1) + "-" + hash(all);
    }
    return RESERVED.contains(id) ? "cell-" + id : id;
  }

  private static String maker(String maker) {
    return cut(slug(maker), MAX_MAKER_LENGTH);
  }

  /** Maker and model, without the maker twice where the model already begins with it. */
  private static String join(String maker, String model) {
    return maker.isEmpty() || model.equals(maker) || model.startsWith(maker + "-")
        ? model
        : maker + "-" + model;
  }

  private static String slug(String text) {
    if (text == null) {
      return "";
    }
    String plain = Normalizer.normalize(text, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
    for (Map.Entry<String, String> entry : LATIN.entrySet()) {
      plain = plain.replace(entry.getKey(), entry.getValue());
    }
    return plain.replaceAll("\\p{M}+", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
  }

  private static String stem(String fileName) {
    if (fileName == null) {
      return "";
    }
    int dot = fileName.lastIndexOf('.');
    return dot > 0 ? fileName.substring(0, dot) : fileName;
  }

  /** The beginning of a slug, cut between words where there is a hyphen in its second half. */
  private static String cut(String slug, int length) {
    if (slug.length() <= length) {
      return slug;
    }
    int hyphen = slug.lastIndexOf('-', length);
    return slug.substring(0, hyphen > length / 2 ? hyphen : length).replaceAll("-$", "");
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, HASH_LENGTH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
