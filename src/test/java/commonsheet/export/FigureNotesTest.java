package commonsheet.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class FigureNotesTest {
  private final FigureNotes notes = new FigureNotes();

  @Test
  void whatIsSaidOfSeveralCellsIsSaidOnce() {
    for (String cell : List.of("A", "B", "C", "D", "E")) {
      if (!cell.equals("E")) {
        notes.add(cell, "heat", List.of("between c1 and c" + cell, "with diffusion in it"));
        notes.add(cell, "drop", List.of("with diffusion in it"));
      }
      notes.add(cell, "energy", List.of("to the cut-off"));
    }
    assertEquals(
        List.of(
            "All but E: heat, drop: with diffusion in it.",
            "All: energy: to the cut-off.",
            "A: heat: between c1 and cA.",
            "B: heat: between c1 and cB.",
            "C: heat: between c1 and cC.",
            "D: heat: between c1 and cD."),
        notes.lines());
  }

  @Test
  void fewerCellsThanAreLeftOutAreNamed() {
    for (String cell : List.of("A", "B", "C", "D", "E", "F", "G")) {
      notes.add(cell, "heat", cell.compareTo("C") <= 0 ? List.of("by a model") : List.of());
    }
    assertEquals(List.of("A, B, C: heat: by a model."), notes.lines());
  }
}
