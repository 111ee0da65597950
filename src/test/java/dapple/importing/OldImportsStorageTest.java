package dapple.importing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.importing.sheet.UnreadableException;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.HourPassed;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.attribute.FileTime;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;

@StorageTest
class OldImportsStorageTest {
    private static final Duration AN_HOUR = Duration.ofHours(1);

    @Autowired
    private ApplicationEventPublisher events;

    @Autowired
    private Imports imports;

    @Autowired
    private Sent sent;

    @Autowired
    private Runs runs;

    @Autowired
    private TestCollection collection;

    @Autowired
    private JdbcClient database;

    @Autowired
    private Clock clock;

    private SignedIn supervisor;

    @BeforeEach
    void hire() {
        supervisor = collection.person(collection.site(), Role.SUPERVISOR);
    }

    @Test
    void afterAWeekTheFileGoesAndTheImportIsOver() throws IOException {
        long run = sentBefore(OldImports.KEPT.plus(AN_HOUR));

        events.publishEvent(new HourPassed());

        assertThatThrownBy(() -> sent.of(run)).isInstanceOf(UnreadableException.class);
        assertThat(runs.get(supervisor.siteId(), run).state()).isEqualTo(Run.State.EXPIRED);
    }

    @Test
    void untilThenBothStay() throws IOException {
        long run = sentBefore(OldImports.KEPT.minus(AN_HOUR));

        events.publishEvent(new HourPassed());

        assertThat(sent.of(run)).exists();
        assertThat(runs.get(supervisor.siteId(), run).isOpen()).isTrue();
    }

    @Test
    void whatWasStoredBeforeMoreWasKeptIsRead() throws IOException {
        long run = sentBefore(AN_HOUR);

        database.sql("update import_run set surveys = replace(surveys, ',\"onlyDays\":false', '') where id = :id")
                .param("id", run)
                .update();

        assertThat(runs.get(supervisor.siteId(), run)
                        .surveys()
                        .get(0)
                        .columns()
                        .get(0)
                        .onlyDays())
                .isFalse();
    }

    private long sentBefore(Duration age) throws IOException {
        byte[] sheet = "Enclosure,Date,Basking UVI\nE1,2025-11-13,3.4\n".getBytes(StandardCharsets.UTF_8);
        long run = imports.open(supervisor, "weeks.csv", new ByteArrayInputStream(sheet));
        Instant then = clock.instant().minus(age);
        Files.setLastModifiedTime(sent.of(run), FileTime.from(then));
        database.sql("update import_run set begun_at = :then where id = :id")
                .param("then", Timestamp.from(then))
                .param("id", run)
                .update();
        return run;
    }
}
