package commonsheet.sheet;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** Looks whether a page's content unpacks whole and to a bearable size, before it is read. */
final class ContentCheck {
  private static final int CHUNK = 1 << 16;

  private ContentCheck() {}

  /**
   * Checks the content of a page. The PDF library would stop at the first damaged byte and go on
   * with what it has, so that half a page would pass for a whole one.
   *
   * @throws PageLimitException if it unpacks to more bytes than allowed
   * @throws IOException if it is damaged
   */
  static void check(PDPage page, long most) throws IOException {
    Iterator<PDStream> streams = page.getContentStreams();
    while (streams.hasNext()) {
      COSStream stream = streams.next().getCOSObject();
      if (COSName.FLATE_DECODE.equals(stream.getFilters()) && unpacked(stream, most) > most) {
        throw new PageLimitException("unpacks to more than " + (most >> 20) + " MiB");
      }
    }
  }

  private static long unpacked(COSStream stream, long most) throws IOException {
    byte[] chunk = new byte[CHUNK];
    long total = 0;
    try (InputStream in = new InflaterInputStream(stream.createRawInputStream())) {
      int read = in.read(chunk);
      while (read >= 0 && total <= most) {
        total += read;
        read = in.read(chunk);
      }
    } catch (EOFException endMarkMissing) {
      // Some producers leave out the last bytes, which hold a checksum only.
      return total;
    } catch (ZipException e) {
      if (isDamage(e)) {
        throw e;
      }
    }
    return total;
  }

  /**
   * Whether zlib met impossible data or a wrong checksum; a wrong header alone does not hurt the
   * content.
   */
  private static boolean isDamage(ZipException e) {
    String message = String.valueOf(e.getMessage());
    return message.startsWith("invalid") || message.equals("incorrect data check");
  }
}
