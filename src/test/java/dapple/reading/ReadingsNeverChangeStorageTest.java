package dapple.reading;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/** PostgreSQL refuses to change a reading even to who is past the program; H2 has no triggers in SQL. */
@StorageTest
@EnabledIfSystemProperty(named = "dapple.test.database", matches = "postgresql")
class ReadingsNeverChangeStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private Clock clock;

    private long reading;

    @BeforeEach
    void log() {
        SiteFacts site = collection.site();
        SignedIn keeper = collection.person(site, Role.KEEPER);
        MeterFacts meter = collection.meter(site);
        Home home = collection.home(site, keeper, collection.species(site, "Agama agama"));
        VisitPlace place = new VisitPlace(
                UUID.randomUUID(), home.enclosureId(), home.basking().id());
        reading =
                logging.log(Visitor.of(keeper), new Entry(UUID.randomUUID(), place, meter.id(), 3.4, clock.instant()));
    }

    @Test
    void anUpdateIsRefused() {
        assertThatThrownBy(() -> database.update("update reading set amount = 4 where id = ?", reading))
                .hasMessageContaining("a reading is never changed");
    }

    @Test
    void aDeletionIsRefused() {
        assertThatThrownBy(() -> database.update("delete from reading where id = ?", reading))
                .hasMessageContaining("a reading is never changed");
    }
}
