package dapple.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/** One PostgreSQL server for a run of tests: a container where Docker answers, else a server from a jar. */
final class PostgresServer {
    private static final String IMAGE = "postgres:17";
    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static final Optional<Address> ADDRESS = isDockerAvailable() ? container() : embedded();

    private PostgresServer() {}

    static boolean isAvailable() {
        return ADDRESS.isPresent();
    }

    static boolean isDockerAvailable() {
        return DockerClientFactory.instance().isDockerAvailable();
    }

    /** A database of its own, empty, for one application context. */
    static Address freshDatabase() {
        Address server = ADDRESS.orElseThrow();
        String name = "dapple" + DATABASES.incrementAndGet();
        try (Connection connection = DriverManager.getConnection(server.url(), server.user(), server.password());
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException cause) {
            throw new IllegalStateException("cannot create a test database", cause);
        }
        return new Address(
                server.url().replaceFirst("/[^/?]*(\\?|$)", "/" + name + "$1"), server.user(), server.password());
    }

    /** Stopped by the container library's own watchdog when the tests end. */
    @SuppressWarnings("resource")
    private static Optional<Address> container() {
        PostgreSQLContainer container = new PostgreSQLContainer(IMAGE);
        container.start();
        return Optional.of(new Address(container.getJdbcUrl(), container.getUsername(), container.getPassword()));
    }

    /** Stopped by its own shutdown hook. */
    @SuppressWarnings("resource")
    private static Optional<Address> embedded() {
        try {
            EmbeddedPostgres server = EmbeddedPostgres.builder().start();
            return Optional.of(new Address(server.getJdbcUrl("postgres", "postgres"), "postgres", "postgres"));
        } catch (IOException | RuntimeException cause) {
            System.out.println("PostgreSQL cannot be started from its jar: " + cause);
            return Optional.empty();
        }
    }

    /** Where a database is reached. */
    record Address(String url, String user, String password) {}
}
