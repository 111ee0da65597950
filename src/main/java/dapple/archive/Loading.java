package dapple.archive;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.flywaydb.core.api.FlywayException;
import org.springframework.stereotype.Component;

/** Makes a database hold what an archive holds, and nothing else. What goes wrong in the middle leaves it empty. */
@Component
class Loading {
    private final SchemaVersions versions;
    private final DataSource database;

    Loading(SchemaVersions versions, DataSource database) {
        this.versions = versions;
        this.database = database;
    }

    boolean knows(Manifest manifest) {
        return versions.isKnown(manifest.schema());
    }

    /**
     * Loads a checked archive into tables as they were when it was made, then brings them up to date.
     *
     * @param last what belongs to it besides
     * @return how many rows were loaded
     * @throws ArchiveRefusedException if the database does not take it; it is empty then
     */
    long load(ArchiveFile archive, Runnable last) {
        boolean isDone = false;
        try {
            versions.beginAt(archive.manifest().schema());
            long rows = loadTables(archive);
            versions.bringUpToDate();
            last.run();
            isDone = true;
            return rows;
        } catch (IOException
                | SQLException
                | UncheckedIOException
                | FlywayException
                | CsvParseException
                | DateTimeException
                | IllegalArgumentException unfit) {
            throw new ArchiveRefusedException(ArchiveFault.UNFIT, unfit);
        } finally {
            if (!isDone) {
                versions.beginAnew();
            }
        }
    }

    private long loadTables(ArchiveFile archive) throws SQLException, IOException {
        try (Connection connection = database.getConnection()) {
            connection.setAutoCommit(false);
            try {
                return loadTables(archive, connection);
            } finally {
                connection.rollback();
                connection.setAutoCommit(true);
            }
        }
    }

    private static long loadTables(ArchiveFile archive, Connection connection) throws SQLException, IOException {
        List<StoredTable> tables = StoredTables.of(connection);
        Set<String> names = tables.stream().map(StoredTable::name).collect(Collectors.toCollection(TreeSet::new));
        if (!names.equals(archive.manifest().rows().keySet())) {
            throw new ArchiveRefusedException(ArchiveFault.UNFIT, "other tables than the version has");
        }
        TableLoading loading = new TableLoading(connection, archive);
        long rows = 0;
        for (StoredTable table : tables) {
            rows += loading.load(table);
        }
        for (StoredTable table : tables) {
            loading.countOn(table, names);
        }
        loading.countRevisionsOn();
        connection.commit();
        return rows;
    }
}
