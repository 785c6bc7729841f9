package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MainTest {
  @Test
  void aMistypedCommandIsAnsweredWithTheOneMeant() {
    Run run = Run.of("schem");
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("Did you mean: commonsheet schema"), run.err());
    assertEquals("", run.out());
  }

  @Test
  void aCommandThatIsNoneIsAnsweredWithThoseThereAre() {
    Run run = Run.of("zzz", "sheet.pdf");
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("The commands are read, "), run.err());
    assertEquals("", run.out());
  }

  @Test
  void anUnknownOptionIsNamedWithoutThePageOfHelp() {
    Run run = Run.of("read", "--ou", "records", "sheet.pdf");
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("--ou"), run.err());
    assertFalse(run.err().contains("Usage:"), run.err());
    assertTrue(run.err().contains("commonsheet read --help"), run.err());
  }

  @Test
  void helpCarriesTheCaution() {
    Run run = Run.of("--help");
    assertEquals(ExitStatus.DONE, run.status());
    assertTrue(run.out().contains("no substitute for the makers'"), run.out());
  }

  @Test
  void noCommandAtAllIsAUsageError() {
    Run run = Run.of();
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("commonsheet --help"), run.err());
  }
}
