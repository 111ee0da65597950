package dapple.site;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.springframework.core.io.ClassPathResource;

/** Reads the tables that the program carries, such as those of {@code shared}: RFC 4180, UTF-8, names in the first row. */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** The rows of a table, each made from its named fields. */
    public static <T> List<T> rows(String path, Function<NamedCsvRecord, T> row) {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .ofNamedCsvRecord(
                        new InputStreamReader(new ClassPathResource(path).getInputStream(), StandardCharsets.UTF_8))) {
            return reader.stream().map(row).toList();
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read the table " + path, cause);
        }
    }
}
