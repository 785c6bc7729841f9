package commonsheet.cli;

import commonsheet.sheet.KeptWords;
import picocli.CommandLine.Option;

/** What the commands that read sheets let one choose about the words of pictures. */
final class Recognition {
  @Option(
      names = "--no-cache",
      description = "Recognise the words of pictures anew, and keep none for the next time.")
  private boolean anew;

  /** What was recognised before; null to recognise everything anew. */
  KeptWords kept() {
    return anew ? null : KeptWords.ofMachine();
  }
}
