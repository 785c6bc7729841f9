package commonsheet.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What one run of the program printed, and its status. */
record Run(int status, String out, String err) {
  static Run of(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    return new Run(status, out.toString(), err.toString());
  }
}
