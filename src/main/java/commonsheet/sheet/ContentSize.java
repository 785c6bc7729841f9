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

/** Looks how large a page's content becomes before it is unpacked into memory. */
final class ContentSize {
  /** Deflate packs at most some 1032 bytes into one (zlib, technical details). */
  private static final long BEST_PACKING = 1032;

  private static final int CHUNK = 1 << 16;

  private ContentSize() {}

  /**
   * Checks the content of a page.
   *
   * @throws PageLimitException if it unpacks to more bytes than allowed
   */
  static void check(PDPage page, long most) throws IOException {
    Iterator<PDStream> streams = page.getContentStreams();
    while (streams.hasNext()) {
      COSStream stream = streams.next().getCOSObject();
      boolean packed = COSName.FLATE_DECODE.equals(stream.getFilters());
      if (packed && stream.getLength() > most / BEST_PACKING && unpacked(stream, most) > most) {
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
    } catch (EOFException | ZipException damaged) {
      // What has come out so far counts; whether the rest is lost is for the reader of the page to say.
      return total;
    }
    return total;
  }
}
