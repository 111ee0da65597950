package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Sheet;
import dapple.importing.sheet.SheetFile;
import dapple.importing.sheet.SheetTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The sheets of a file that are read, with what their columns mean; those that say what meters measure come first. */
final class Tables implements AutoCloseable {
    private final SheetFile file;
    private final List<One> all = new ArrayList<>();

    /** One sheet and its table. */
    record One(Sheet sheet, SheetTable table) {}

    private Tables(SheetFile file) {
        this.file = file;
    }

    static Tables open(Path path, Run run) {
        try {
            Tables tables = new Tables(SheetFile.open(path, run.fileName()));
            List<Sheet> sheets = tables.file.sheets();
            for (int number = 0; number < run.surveys().size(); number++) {
                SheetTable table = new SheetTable(
                        run.surveys().get(number), run.choices().sheets().get(number));
                One one = new One(sheets.get(number), table);
                if (table.isRead()) {
                    tables.all.add(table.hasColumn(Field.METER_QUANTITY) ? 0 : tables.all.size(), one);
                }
            }
            return tables;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    List<One> all() {
        return all;
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
