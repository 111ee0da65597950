package dapple.site;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategy;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/**
 * Writes tables for spreadsheets: RFC 4180 with titles in the first record, UTF-8 with a byte order mark, by which
 * spreadsheets know it.
 */
@Component
public class CsvWriting {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** Spreadsheets that are told nothing part cells at these too. */
    private static final QuoteStrategy WHOLE_IN_ANY_SPREADSHEET = new QuoteStrategy() {
        @Override
        public boolean quoteValue(int line, int field, String cell) {
            return cell.indexOf(';') >= 0 || cell.indexOf('\t') >= 0;
        }
    };

    private final MessageSource words;

    CsvWriting(MessageSource words) {
        this.words = words;
    }

    /** Writes row by row; what it is written to is not closed. */
    public <T> void write(CsvColumns<T> columns, CsvRows<T> rows, ZoneId zone, OutputStream to) throws IOException {
        CsvCells cells = new CsvCells(words, zone);
        to.write(BYTE_ORDER_MARK.getBytes(StandardCharsets.UTF_8));
        CsvWriter csv = CsvWriter.builder()
                .lineDelimiter(LineDelimiter.CRLF)
                .quoteStrategy(WHOLE_IN_ANY_SPREADSHEET)
                .build(to, StandardCharsets.UTF_8);
        csv.writeRecord(columns.all().stream().map(cells::title).toList());
        rows.each(row -> csv.writeRecord(record(columns, cells, row)));
        csv.flush();
    }

    private static <T> List<String> record(CsvColumns<T> columns, CsvCells cells, T row) {
        return columns.all().stream().map(column -> cells.cell(column, row)).toList();
    }
}
