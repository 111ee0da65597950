package dapple.testing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.ObjectReader;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** A file for spreadsheets as another reader takes it than the library that wrote it. */
public record CsvTable(List<Map<String, String>> rows) {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final ObjectReader READER = new CsvMapper()
            .readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader());

    public static CsvTable of(byte[] file) throws IOException {
        String text = new String(file, StandardCharsets.UTF_8);
        if (!text.startsWith(BYTE_ORDER_MARK)) {
            throw new IllegalArgumentException("a file for spreadsheets begins with a byte order mark");
        }
        try (MappingIterator<Map<String, String>> rows = READER.readValues(text.substring(1))) {
            return new CsvTable(rows.readAll());
        }
    }

    /** The cells under a title, from top to bottom. */
    public List<String> column(String title) {
        return rows.stream()
                .map(row -> row.getOrDefault(title, "no column " + title))
                .toList();
    }
}
