package commonsheet.export;

import commonsheet.compare.Contender;
import commonsheet.record.CellRecord;
import java.util.List;

/** What a cell is called in a comparison. */
public final class CellName {
  private CellName() {}

  /** Its model, or the record's id where the sheet names none. */
  public static String of(Contender contender) {
    CellRecord record = contender.cell().record();
    String model = record.cell() == null ? "" : Printed.clean(record.cell().model());
    return model.isEmpty() ? Printed.clean(record.id()) : model;
  }

  /** The same, with the record's id behind it where another cell is called so too. */
  public static String among(List<Contender> others, Contender contender) {
    String name = of(contender);
    long called = others.stream().filter(other -> of(other).equals(name)).count();
    return called > 1 ? name + " (" + Printed.clean(contender.cell().record().id()) + ")" : name;
  }
}
