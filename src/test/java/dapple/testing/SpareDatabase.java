package dapple.testing;

import com.zaxxer.hikari.HikariDataSource;
import dapple.testing.PostgresServer.Address;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** A database beside that of the application, with all tables and without rows. */
public final class SpareDatabase implements AutoCloseable {
    private final HikariDataSource pool;
    private final String vendor;

    private SpareDatabase(HikariDataSource pool, String vendor) {
        this.pool = pool;
        this.vendor = vendor;
        pool.setMaximumPoolSize(3);
        pool.setIdleTimeout(0);
        pool.setMaxLifetime(0);
    }

    /** H2, whatever the build has chosen. */
    public static SpareDatabase embedded() {
        HikariDataSource pool = new HikariDataSource();
        pool.setJdbcUrl("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
        return new SpareDatabase(pool, "h2");
    }

    /** Of the kind that the build has chosen. */
    public static SpareDatabase ofTheBuild() {
        return TestDatabase.isPostgres() ? postgres() : embedded();
    }

    private static SpareDatabase postgres() {
        Address address = PostgresServer.freshDatabase();
        HikariDataSource pool = new HikariDataSource();
        pool.setJdbcUrl(address.url());
        pool.setUsername(address.user());
        pool.setPassword(address.password());
        return new SpareDatabase(pool, "postgresql");
    }

    public HikariDataSource pool() {
        return pool;
    }

    /** All migrations, none of them run yet. */
    public Flyway migrations() {
        return unloaded().load();
    }

    /** As the program was at an earlier version. */
    public Flyway migrations(String version) {
        return unloaded().target(version).load();
    }

    private FluentConfiguration unloaded() {
        return Flyway.configure().dataSource(pool).locations("classpath:db/migration", "classpath:db/" + vendor);
    }

    @Override
    public void close() {
        pool.close();
    }
}
