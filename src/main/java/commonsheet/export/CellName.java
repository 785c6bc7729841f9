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

  /** The same, with a number behind it where another cell is called so too, by their ids. */
  public static String among(List<Contender> others, Contender contender) {
    String name = of(contender);
    List<String> called =
        others.stream().filter(o -> of(o).equals(name)).map(CellName::id).sorted().toList();
    return called.size() > 1 ? name + " (" + (called.indexOf(id(contender)) + 1) + ")" : name;
  }

  private static String id(Contender contender) {
    return String.valueOf(contender.cell().record().id());
  }
}
