package dapple.archive;

import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.datasource.DataSourceUtils;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Writes archives of what the database holds at one instant, while everybody goes on writing. */
@Service
public class Archives {
    static final String SUMS = "SHA256SUMS";
    private static final String README = "README.txt";
    private static final String EMBEDDED = "H2";

    private final DataSource database;
    private final TransactionTemplate snapshot;
    private final SchemaVersions versions;
    private final Sites sites;
    private final ObjectProvider<RecordSheet> sheets;
    private final Clock clock;

    Archives(
            DataSource database,
            PlatformTransactionManager transactions,
            SchemaVersions versions,
            Sites sites,
            ObjectProvider<RecordSheet> sheets,
            Clock clock) {
        this.database = database;
        this.snapshot = snapshot(transactions);
        this.versions = versions;
        this.sites = sites;
        this.sheets = sheets;
        this.clock = clock;
    }

    /** Serializable, because the embedded database takes its picture of all tables at once only so. */
    private static TransactionTemplate snapshot(PlatformTransactionManager transactions) {
        TransactionTemplate template = new TransactionTemplate(transactions);
        template.setReadOnly(true);
        template.setIsolationLevel(TransactionDefinition.ISOLATION_SERIALIZABLE);
        return template;
    }

    /**
     * Writes an archive. What it is written to is not closed.
     *
     * @param madeBy the name of who asked for it
     */
    Manifest write(ArchiveScope scope, String madeBy, OutputStream to) throws IOException {
        try {
            return snapshot.execute(status -> {
                Connection connection = DataSourceUtils.getConnection(database);
                try {
                    return write(scope, madeBy, connection, new SummedZip(to));
                } catch (IOException cause) {
                    throw new UncheckedIOException(cause);
                } catch (SQLException cause) {
                    throw new IllegalStateException("the database cannot be read", cause);
                } finally {
                    DataSourceUtils.releaseConnection(connection, database);
                }
            });
        } catch (UncheckedIOException cause) {
            throw new IOException("the archive cannot be written", cause);
        }
    }

    private Manifest write(ArchiveScope scope, String madeBy, Connection connection, SummedZip zip)
            throws IOException, SQLException {
        Instant begun = clock.instant();
        takeSnapshot(connection);
        List<StoredTable> tables = StoredTables.of(connection);
        zip.entry(README, Archives::writeReadme);
        zip.flush();
        Map<String, Long> rows = writeTables(tables, scope, connection, zip);
        if (scope instanceof ArchiveScope.Year year) {
            writeSheets(new RecordMaking(year.span(), madeBy, begun, zip::sums), zip);
        }
        Manifest manifest = manifest(scope, madeBy, begun, rows, zip.sums());
        zip.entry(Manifest.ENTRY, to -> to.write(manifest.json()));
        zip.entry(SUMS, to -> to.write(lines(zip.sums())));
        zip.finish();
        return manifest;
    }

    /** The first statement decides what a transaction sees of all tables. */
    private static void takeSnapshot(Connection connection) throws SQLException {
        try (Statement first = connection.createStatement()) {
            first.executeQuery("select count(*) from site").close();
        }
    }

    private static void writeReadme(OutputStream to) throws IOException {
        try (InputStream text = new ClassPathResource("archive/README.txt").getInputStream()) {
            text.transferTo(to);
        }
    }

    private static Map<String, Long> writeTables(
            List<StoredTable> tables, ArchiveScope scope, Connection connection, SummedZip zip)
            throws IOException, SQLException {
        TableWriting writing = new TableWriting(connection, zip, scope);
        Map<String, Long> rows = new TreeMap<>();
        streamRows(connection, true);
        try {
            for (StoredTable table : tables) {
                rows.put(table.name(), writing.write(table));
            }
        } finally {
            streamRows(connection, false);
        }
        return rows;
    }

    /** Has the embedded database hand out rows as it finds them; it would gather a whole table first. */
    private static void streamRows(Connection connection, boolean isWanted) throws SQLException {
        if (connection.getMetaData().getDatabaseProductName().equals(EMBEDDED)) {
            try (Statement statement = connection.createStatement()) {
                statement.execute("set lazy_query_execution " + isWanted);
            }
        }
    }

    private void writeSheets(RecordMaking making, SummedZip zip) throws IOException {
        for (RecordSheet sheet : sheets.orderedStream().toList()) {
            zip.entry("sheets/" + sheet.fileName(), to -> sheet.content().write(making, to));
        }
    }

    private Manifest manifest(
            ArchiveScope scope, String madeBy, Instant begun, Map<String, Long> rows, Map<String, String> sums) {
        Optional<RecordSpan> span =
                scope instanceof ArchiveScope.Year year ? Optional.of(year.span()) : Optional.empty();
        return new Manifest(
                Manifest.PROGRAM,
                Manifest.FORMAT,
                versions.present(),
                span.isPresent() ? ArchiveKind.YEAR : ArchiveKind.EVERYTHING,
                span.map(RecordSpan::site).map(List::of).orElseGet(sites::all).stream()
                        .map(SiteFacts::name)
                        .toList(),
                span.map(RecordSpan::from),
                span.map(RecordSpan::to),
                begun,
                madeBy,
                Duration.between(begun, clock.instant()).toMillis(),
                rows,
                sums);
    }

    /** As the usual tool for such sums reads them. */
    private static byte[] lines(Map<String, String> sums) {
        return new TreeMap<>(sums)
                .entrySet().stream()
                        .map(entry -> entry.getValue() + "  " + entry.getKey() + "\n")
                        .collect(Collectors.joining())
                        .getBytes(StandardCharsets.UTF_8);
    }
}
