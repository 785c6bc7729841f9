package commonsheet.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * Pages and words as bytes, compressed and with the check sum of that format (RFC 1952), by which
 * damaged ones are told. Only the program that wrote them reads them: there is no version.
 */
final class PageBytes {
  private PageBytes() {}

  /** Takes something from bytes. */
  @FunctionalInterface
  private interface Source<T> {
    T next(DataInputStream in) throws IOException;
  }

  /** Puts something into bytes. */
  @FunctionalInterface
  private interface Sink<T> {
    void put(DataOutputStream out, T value) throws IOException;
  }

  static byte[] of(PageContent page) {
    return written(PageBytes::putPage, page);
  }

  static byte[] of(List<Word> words) {
    return written((out, all) -> putAll(out, all, PageBytes::putWord), words);
  }

  /** The page; throws {@link IOException} where the bytes are not one. */
  static PageContent page(byte[] bytes) throws IOException {
    return read(bytes, PageBytes::nextPage);
  }

  /** The words; throws {@link IOException} where the bytes are none. */
  static List<Word> words(byte[] bytes) throws IOException {
    return read(bytes, in -> all(in, PageBytes::nextWord));
  }

  private static <T> byte[] written(Sink<T> sink, T value) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes))) {
      sink.put(out, value);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  private static <T> T read(byte[] bytes, Source<T> source) throws IOException {
    try (GZIPInputStream whole = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
      // The check sum stands at the end, so everything is unpacked before anything is believed.
      return source.next(new DataInputStream(new ByteArrayInputStream(whole.readAllBytes())));
    }
  }

  private static void putPage(DataOutputStream out, PageContent page) throws IOException {
    out.writeInt(page.number());
    out.writeDouble(page.width());
    out.writeDouble(page.height());
    putAll(out, page.body(), PageBytes::putWord);
    putAll(out, page.aside(), PageBytes::putWord);
    putAll(out, page.rulings().level(), PageBytes::putRuling);
    putAll(out, page.rulings().upright(), PageBytes::putRuling);
    putAll(out, page.curves(), PageBytes::putBox);
    putAll(out, page.pictures().boxes(), PageBytes::putBox);
    out.writeBoolean(page.pictures().drawn());
    putAll(out, page.figures(), PageBytes::putBox);
    out.writeInt(page.turned());
  }

  private static PageContent nextPage(DataInputStream in) throws IOException {
    return new PageContent(
        in.readInt(),
        in.readDouble(),
        in.readDouble(),
        all(in, PageBytes::nextWord),
        all(in, PageBytes::nextWord),
        new Rulings(all(in, PageBytes::nextRuling), all(in, PageBytes::nextRuling)),
        all(in, PageBytes::nextBox),
        new PictureRegions(all(in, PageBytes::nextBox), in.readBoolean()),
        all(in, PageBytes::nextBox),
        in.readInt());
  }

  private static void putWord(DataOutputStream out, Word word) throws IOException {
    out.writeUTF(word.text());
    putBox(out, word.box());
    out.writeDouble(word.size());
    out.writeBoolean(word.bold());
    out.writeInt(word.turn());
    out.writeInt(word.raised());
    out.writeBoolean(word.recognised());
    out.writeDouble(word.confidence());
  }

  private static Word nextWord(DataInputStream in) throws IOException {
    return new Word(
        in.readUTF(),
        nextBox(in),
        in.readDouble(),
        in.readBoolean(),
        in.readInt(),
        in.readInt(),
        in.readBoolean(),
        in.readDouble());
  }

  private static void putRuling(DataOutputStream out, Ruling ruling) throws IOException {
    out.writeBoolean(ruling.level());
    out.writeDouble(ruling.at());
    out.writeDouble(ruling.from());
    out.writeDouble(ruling.to());
  }

  private static Ruling nextRuling(DataInputStream in) throws IOException {
    return new Ruling(in.readBoolean(), in.readDouble(), in.readDouble(), in.readDouble());
  }

  private static void putBox(DataOutputStream out, Box box) throws IOException {
    out.writeDouble(box.x());
    out.writeDouble(box.y());
    out.writeDouble(box.width());
    out.writeDouble(box.height());
  }

  private static Box nextBox(DataInputStream in) throws IOException {
    return new Box(in.readDouble(), in.readDouble(), in.readDouble(), in.readDouble());
  }

  private static <T> void putAll(DataOutputStream out, List<T> all, Sink<T> sink)
      throws IOException {
    out.writeInt(all.size());
    for (T each : all) {
      sink.put(out, each);
    }
  }

  private static <T> List<T> all(DataInputStream in, Source<T> source) throws IOException {
    int size = in.readInt();
    List<T> all = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      all.add(source.next(in));
    }
    return all;
  }
}
