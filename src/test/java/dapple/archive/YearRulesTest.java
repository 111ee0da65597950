package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every table and every secret is thought of. A failure here asks whoever adds a table what a year's record holds of it. */
class YearRulesTest {
    private static final String URL = "jdbc:h2:mem:year-rules;DB_CLOSE_DELAY=-1";

    private static List<StoredTable> tables = List.of();

    @BeforeAll
    static void readTables() throws SQLException {
        Flyway.configure().dataSource(URL, "", "").load().migrate();
        try (Connection connection = DriverManager.getConnection(URL)) {
            tables = StoredTables.of(connection);
        }
    }

    @Test
    void everyTableGrowsOrGoesWhole() {
        assertThat(YearRules.tables())
                .containsExactlyInAnyOrderElementsOf(
                        tables.stream().map(StoredTable::name).toList());
    }

    @Test
    void noTableStandsInBoth() {
        assertThat(YearRules.saidTwice()).isEmpty();
    }

    @Test
    void everyHashIsLeftOut() {
        assertThat(tables)
                .allSatisfy(table -> assertThat(table.columnNames())
                        .filteredOn(column -> column.endsWith("_hash"))
                        .allMatch(column -> Secrets.isSecret(table.name(), column)));
    }

    @Test
    void aTableComesAfterThoseThatItNames() {
        List<String> order = tables.stream().map(StoredTable::name).toList();
        assertThat(tables)
                .allSatisfy(table -> assertThat(table.parents())
                        .allMatch(parent -> order.indexOf(parent) < order.indexOf(table.name())));
    }

    /** Every table has a key, so that its rows stand in one order and its files have names. */
    @Test
    void everyTableHasAKey() {
        assertThat(tables).isNotEmpty().noneMatch(table -> table.key().isEmpty());
    }
}
