package commonsheet.workbench;

import commonsheet.record.CellRecord;
import commonsheet.sheet.SheetException;
import commonsheet.workbench.desk.RecordView;
import commonsheet.workbench.folder.SheetPlace;
import commonsheet.workbench.folder.Sheets;
import commonsheet.workbench.place.PagePictures;
import java.util.List;
import java.util.function.Function;

/** What a record's page is told of its sheet: where it is, how large its pages are. */
record SheetOfRecord(Sheets sheets, PagePictures pictures)
    implements Function<CellRecord, RecordView.SheetView> {
  @Override
  public RecordView.SheetView apply(CellRecord record) {
    if (!record.source().isDocument()) {
      return null;
    }
    String name = record.source().file();
    SheetPlace place = sheets.of(record);
    if (!place.isFound()) {
      return new RecordView.SheetView(name, false, place.reason(), List.of());
    }
    try {
      return new RecordView.SheetView(
          name,
          true,
          place.reason(),
          pictures.sizes(place.file()).stream()
              .map(size -> new RecordView.PageSize(size.page(), size.width(), size.height()))
              .toList());
    } catch (SheetException unreadable) {
      return new RecordView.SheetView(name, false, unreadable.getMessage(), List.of());
    }
  }
}
