package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.metrology.RepeatsTaken;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.Given;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;

@StorageTest
class RepeatsStorageTest {
    private static final List<Double> TWICE = List.of(2.0, 3.0, 4.0, 2.8, 3.2, 3.0);
    private static final double EXACT = 1e-4;

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private VisitCovers covers;

    @Autowired
    private VisitNoting noting;

    @Autowired
    private RepeatsOnRecord repeats;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private Clock clock;

    private final UUID visit = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site);
        home = collection.home(site, keeper, collection.species(site, "Agama agama"));
    }

    @Test
    void everythingThatWasTypedStaysBesideTheReading() {
        long reading = logging.log(Visitor.of(keeper), entry(TWICE));
        assertThat(repeats.ofReadings(site.id(), List.of(reading)).get(reading)).isEqualTo(new RepeatsTaken(TWICE));
    }

    /** Worked by hand in RepeatScatterTest: ± 0.6455 of a meter with 20 %. */
    @Test
    void theirScatterIsInTheInterval() {
        long reading = logging.log(Visitor.of(keeper), entry(TWICE));
        assertThat(high(reading)).isCloseTo(3.0 + 0.6455, within(EXACT));
    }

    @Test
    void theIntervalOfOneAmountIsTheMeters() {
        long reading = logging.log(Visitor.of(keeper), single());
        assertThat(high(reading)).isCloseTo(3.0 + meter.uncertainty().expanded(3.0), within(EXACT));
    }

    @Test
    void sentManyTimesAtOnceTheyAreStoredOnce() {
        Entry entry = entry(TWICE);
        List<Throwable> thrown = Together.run(
                () -> logging.log(Visitor.of(keeper), entry),
                () -> logging.log(Visitor.of(keeper), entry),
                () -> logging.log(Visitor.of(keeper), entry));
        assertThat(thrown).isEmpty();
        assertThat(count(
                        "select count(*) from reading_repeat p join reading r on r.id = p.reading_id where r.entry_key = ?",
                        entry.key()))
                .isEqualTo(6);
    }

    @Test
    void noNumberIsTakenTwice() {
        long reading = logging.log(Visitor.of(keeper), entry(TWICE));
        assertThatThrownBy(() -> insert(reading, 6, 1)).isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void noSeventhIsStored() {
        long reading = logging.log(Visitor.of(keeper), entry(TWICE));
        assertThatThrownBy(() -> insert(reading, 7, 1)).isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void whatIsNoNumberIsNotStored() {
        long reading = logging.log(Visitor.of(keeper), single());
        assertThatThrownBy(() -> insert(reading, 1, Double.NaN)).isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void aCoverThatIsSentAgainLateChangesNothing() {
        NewCover open = cover(CoverSaid.OPEN);
        covers.say(Visitor.of(keeper), open);
        covers.say(Visitor.of(keeper), cover(CoverSaid.CLOSED));
        covers.say(Visitor.of(keeper), open);
        assertThat(covers.of(site.id(), visit)).map(VisitCoverFacts::cover).contains(CoverSaid.CLOSED);
    }

    @Test
    void aNoteKeepsTheTimeAtWhichItWasTyped() {
        Instant typed = clock.instant().minusSeconds(3600);
        NewNote note = new NewNote(UUID.randomUUID(), visit, home.enclosureId(), "Mesh is dusty", typed);
        noting.note(Visitor.of(keeper), note);
        noting.note(Visitor.of(keeper), note);
        assertThat(noting.of(site.id(), visit))
                .containsExactly(new VisitNoteFacts("Mesh is dusty", typed, keeper.personId()));
    }

    private NewCover cover(CoverSaid said) {
        return new NewCover(UUID.randomUUID(), visit, home.enclosureId(), said, clock.instant());
    }

    private Entry entry(List<Double> amounts) {
        RepeatsTaken taken = new RepeatsTaken(amounts);
        return single().repeated(taken, taken.amount());
    }

    private Entry single() {
        VisitPlace place =
                new VisitPlace(visit, home.enclosureId(), home.basking().id());
        return new Entry(UUID.randomUUID(), place, meter.id(), 3.0, clock.instant());
    }

    private double high(long reading) {
        return Given.of(
                database.queryForObject("select max(high) from verdict where reading_id = ?", Double.class, reading));
    }

    private int count(String query, UUID key) {
        return Given.of(database.queryForObject(query, Integer.class, key));
    }

    private void insert(long reading, int number, double amount) {
        database.update(
                "insert into reading_repeat (site_id, reading_id, number, amount) values (?, ?, ?, ?)",
                site.id(),
                reading,
                number,
                amount);
    }
}
