package dapple.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sessions of the embedded database are never retired; those of a server are. */
class LastingSessionsTest {
    private static final String IN_MEMORY = "jdbc:h2:mem:lasting-sessions";

    @ParameterizedTest
    @ValueSource(strings = {"jdbc:h2:file:./data/dapple", IN_MEMORY})
    void thoseOfTheEmbeddedDatabaseLiveForEver(String url) {
        try (HikariDataSource pool = prepared(url)) {
            assertThat(pool.getMaxLifetime()).isZero();
            assertThat(pool.getIdleTimeout()).isZero();
        }
    }

    @Test
    void thoseOfAServerAreRenewed() {
        try (HikariDataSource pool = prepared("jdbc:postgresql://localhost/dapple")) {
            assertThat(pool.getMaxLifetime()).isPositive();
        }
    }

    /** Why: once this fails, the database is mended, and the sessions may be renewed. */
    @Test
    void aConstraintOutlivesNotTheSessionThatMadeIt() throws SQLException {
        try (Connection reader = DriverManager.getConnection(IN_MEMORY)) {
            try (Connection maker = DriverManager.getConnection(IN_MEMORY)) {
                maker.createStatement()
                        .execute("create table kept (named varchar(9), constraint ck check (named in ('A', 'B')))");
            }
            assertThatThrownBy(() -> reader.createStatement().execute("insert into kept values ('A')"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("CK");
        }
    }

    private static HikariDataSource prepared(String url) {
        HikariDataSource pool = new HikariDataSource();
        pool.setJdbcUrl(url);
        return (HikariDataSource) new LastingSessions().postProcessAfterInitialization(pool, "dataSource");
    }
}
