package dapple.testing;

import dapple.testing.PostgresServer.Address;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;

/**
 * Gives each application context an empty database: H2, or PostgreSQL with {@code -Ddapple.test.database=postgresql}; and
 * checks every query at the start.
 */
public class TestDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {
    static boolean isPostgres() {
        return "postgresql".equals(System.getProperty("dapple.test.database"));
    }

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        context.getEnvironment()
                .getPropertySources()
                .addFirst(new MapPropertySource("test database", isPostgres() ? postgres() : h2()));
        TestPropertyValues.of(
                        "spring.data.jpa.repositories.bootstrap-mode=default",
                        "dapple.data="
                                + Path.of("target", "data", UUID.randomUUID().toString())
                                        .toAbsolutePath(),
                        "dapple.backup.behind-the-scenes=false",
                        "dapple.agreement.behind-the-scenes=false",
                        "dapple.leaving.behind-the-scenes=false")
                .applyTo(context);
    }

    /**
     * In memory, keeping as many statements as the program; on the disk, as the program keeps it, with
     * {@code -Ddapple.test.database=file}: for what is measured.
     */
    private static Map<String, Object> h2() {
        if ("file".equals(System.getProperty("dapple.test.database"))) {
            return Map.of();
        }
        return Map.of(
                "spring.datasource.url",
                "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1;QUERY_CACHE_SIZE=128");
    }

    private static Map<String, Object> postgres() {
        Address database = PostgresServer.freshDatabase();
        return Map.of(
                "spring.datasource.url", database.url(),
                "spring.datasource.username", database.user(),
                "spring.datasource.password", database.password(),
                "spring.datasource.hikari.maximum-pool-size", 6);
    }
}
