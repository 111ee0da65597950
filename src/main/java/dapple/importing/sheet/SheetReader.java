package dapple.importing.sheet;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.SequenceInputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;

/** The rows of a sheet, one after the other, never all at once; empty ones are left out. */
public final class SheetReader implements Iterator<SheetRow>, AutoCloseable {
    public static final int MOST_COLUMNS = 300;
    public static final int LONGEST_FIELD = 100_000;
    public static final long MOST_ROWS = 3_000_000;
    private static final int LONGEST_ROW = 1_000_000;
    private static final int LETTERS_LOOKED_AT = 64 * 1024;

    private final String label;
    private final Encoding encoding;
    private final char separator;
    private final CloseableIterator<CsvRecord> records;
    private Optional<SheetRow> next = Optional.empty();
    private long line;
    private long rows;

    private SheetReader(Sheet sheet, InputStream in) throws IOException {
        this.label = sheet.label();
        byte[] head = in.readNBytes(Encoding.LOOKED_AT);
        if (head.length == 0) {
            throw new UnreadableException(Fault.EMPTY);
        }
        this.encoding = Encoding.of(head, head.length < Encoding.LOOKED_AT);
        byte[] text = Arrays.copyOfRange(head, encoding.markBytes(), head.length);
        this.separator =
                Separator.of(new String(text, 0, Math.min(text.length, LETTERS_LOOKED_AT), encoding.charset()));
        InputStream all = new SequenceInputStream(new ByteArrayInputStream(text), in);
        this.records = CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .maxBufferSize(LONGEST_ROW)
                .build(handler(), new InputStreamReader(all, encoding.charset()))
                .iterator();
    }

    private static CsvRecordHandler handler() {
        return CsvRecordHandler.builder()
                .maxFields(MOST_COLUMNS)
                .maxFieldSize(LONGEST_FIELD)
                .maxRecordSize(LONGEST_ROW)
                .build();
    }

    /**
     * Opens a sheet; the caller closes the reader.
     *
     * @throws UnreadableException if it is no text
     */
    public static SheetReader of(Sheet sheet) {
        try {
            return new SheetReader(sheet, sheet.open());
        } catch (UnreadableException refused) {
            throw refused.in(sheet.label(), 0);
        } catch (IOException damaged) {
            throw new UnreadableException(Fault.DAMAGED, sheet.label(), 0);
        }
    }

    String charset() {
        return encoding.charset().name();
    }

    char separator() {
        return separator;
    }

    /** @throws UnreadableException if the sheet breaks off or breaks a bound */
    @Override
    public boolean hasNext() {
        try {
            while (next.isEmpty() && records.hasNext()) {
                CsvRecord record = records.next();
                line = record.getStartingLineNumber();
                SheetRow row = new SheetRow(line, record.getFields());
                next = row.isEmpty() ? Optional.empty() : Optional.of(row);
            }
            return next.isPresent();
        } catch (CsvParseException wrong) {
            throw refusal(wrong).in(label, line + 1);
        } catch (UnreadableException refused) {
            throw refused.in(label, line);
        } catch (UncheckedIOException damaged) {
            throw new UnreadableException(Fault.DAMAGED, label, line);
        }
    }

    @Override
    public SheetRow next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        if (++rows > MOST_ROWS) {
            throw new UnreadableException(Fault.TOO_MANY_ROWS, label, line);
        }
        SheetRow row = next.orElseThrow();
        next = Optional.empty();
        return row;
    }

    private static UnreadableException refusal(CsvParseException wrong) {
        StringBuilder said = new StringBuilder();
        Optional<Throwable> cause = Optional.of(wrong);
        while (cause.isPresent()) {
            if (cause.get() instanceof UnreadableException refused) {
                return refused;
            }
            said.append(cause.get().getMessage());
            cause = cause.map(Throwable::getCause);
        }
        return new UnreadableException(fault(said.toString()));
    }

    /** The parser tells its bounds apart by its words alone. */
    private static Fault fault(String said) {
        if (said.contains("surpassed the maximum limit")) {
            return Fault.TOO_MANY_COLUMNS;
        }
        return said.contains("exceeds") || said.contains("buffer size") ? Fault.FIELD_TOO_LONG : Fault.QUOTES;
    }

    @Override
    public void close() {
        try {
            records.close();
        } catch (IOException | UncheckedIOException alreadyBroken) {
            next = Optional.empty();
        }
    }
}
