package commonsheet.columns;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** A text that may not have a line beyond all measure, such as a binary file has. */
final class BoundedLines extends FilterReader {
  /** Cyclers write some thirty columns. */
  private static final int LONGEST_LINE = 20_000;

  private int length;

  BoundedLines(Reader in) {
    super(in);
  }

  /** Tells a line that is too long from a file that cannot be read. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1L;
  }

  @Override
  public int read() throws IOException {
    int c = super.read();
    count((char) c);
    return c;
  }

  @Override
  public int read(char[] buffer, int offset, int most) throws IOException {
    int read = super.read(buffer, offset, most);
    for (int i = offset; i < offset + read; i++) {
      count(buffer[i]);
    }
    return read;
  }

  private void count(char c) throws TooLong {
    length = c == '\n' || c == '\r' ? 0 : length + 1;
    if (length > LONGEST_LINE) {
      throw new TooLong();
    }
  }
}
