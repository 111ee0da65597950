package dapple.archive;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.springframework.stereotype.Component;

/** Which migrations there are, and bringing an empty database to one of them. */
@Component
class SchemaVersions {
    private final Flyway flyway;

    SchemaVersions(Flyway flyway) {
        this.flyway = flyway;
    }

    /** Where the database stands. */
    String present() {
        return Optional.ofNullable(flyway.info().current())
                .map(MigrationInfo::getVersion)
                .map(MigrationVersion::getVersion)
                .orElseThrow();
    }

    boolean isKnown(String version) {
        return MigrationVersion.fromVersion(version).compareTo(newest()) <= 0;
    }

    private MigrationVersion newest() {
        return known().max(Comparator.naturalOrder()).orElseThrow();
    }

    /** Throws away what the database holds and makes its tables as they were at a version: the newest not above it. */
    void beginAt(String version) {
        MigrationVersion asked = MigrationVersion.fromVersion(version);
        MigrationVersion target = known().filter(one -> one.compareTo(asked) <= 0)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        Flyway emptying = Flyway.configure()
                .configuration(flyway.getConfiguration())
                .cleanDisabled(false)
                .target(target)
                .load();
        emptying.clean();
        emptying.migrate();
    }

    /** Makes the tables as the program wants them. */
    void bringUpToDate() {
        flyway.migrate();
    }

    void beginAnew() {
        beginAt(newest().getVersion());
    }

    private Stream<MigrationVersion> known() {
        return Arrays.stream(flyway.info().all()).map(MigrationInfo::getVersion).filter(Objects::nonNull);
    }
}
