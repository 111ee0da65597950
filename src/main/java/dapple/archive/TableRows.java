package dapple.archive;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldModifier;
import de.siegmar.fastcsv.reader.StringArrayHandler;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of a table in an archive, one after the other; {@link #NOTHING} is what was null. */
final class TableRows implements AutoCloseable {
    /** No text of either database may hold this character. */
    static final String NOTHING = "\u0000";

    private static final FieldModifier TELLING_NULLS = new FieldModifier() {
        @Override
        public String modify(long line, int place, boolean isQuoted, String cell) {
            return cell.isEmpty() && !isQuoted ? NOTHING : cell;
        }
    };

    private final CsvReader<String[]> reader;
    private final CloseableIterator<String[]> rows;
    private final List<String> columns;

    TableRows(InputStream content) {
        this.reader = CsvReader.builder()
                .build(
                        StringArrayHandler.builder()
                                .fieldModifier(TELLING_NULLS)
                                .build(),
                        content,
                        StandardCharsets.UTF_8);
        this.rows = reader.iterator();
        this.columns = rows.hasNext() ? List.of(rows.next()) : List.of();
    }

    List<String> columns() {
        return columns;
    }

    boolean hasNext() {
        return rows.hasNext();
    }

    /** @throws CsvParseException if it is no row of the table */
    String[] next() {
        return rows.next();
    }

    @Override
    public void close() throws IOException {
        rows.close();
        reader.close();
    }
}
