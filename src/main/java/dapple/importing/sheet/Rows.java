package dapple.importing.sheet;

import java.util.Iterator;

/** The rows of a table, as somebody asks for them. */
public final class Rows implements Iterator<RowText>, AutoCloseable {
    private final SheetTable table;
    private final SheetReader reader;

    Rows(SheetTable table, SheetReader reader) {
        this.table = table;
        this.reader = reader;
    }

    @Override
    public boolean hasNext() {
        return reader.hasNext();
    }

    @Override
    public RowText next() {
        return new RowText(table, reader.next());
    }

    @Override
    public void close() {
        reader.close();
    }
}
