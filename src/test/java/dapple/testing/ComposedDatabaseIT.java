package dapple.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/** The migrations run from empty on the very image that {@code docker-compose.yml} names. */
@NeedsDocker
class ComposedDatabaseIT {
    @Test
    void takesAllMigrations() throws IOException {
        try (PostgreSQLContainer database = new PostgreSQLContainer(image())) {
            database.start();
            Flyway flyway = Flyway.configure()
                    .dataSource(database.getJdbcUrl(), database.getUsername(), database.getPassword())
                    .locations("classpath:db/migration", "classpath:db/postgresql")
                    .load();
            assertThat(flyway.migrate().success).isTrue();
        }
    }

    private static DockerImageName image() throws IOException {
        Matcher image = Pattern.compile("image: '?(postgres:[^'\\s]+)")
                .matcher(Files.readString(Path.of("docker-compose.yml")));
        assertThat(image.find()).isTrue();
        return DockerImageName.parse(image.group(1));
    }
}
