package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

@StorageTest
class ReadingIntakeStorageTest {
    private static final String VERDICTS = "select r.taken_at, p.role, d.state, d.factor, d.amount, d.low, d.high, "
            + "d.may_exceed, d.finer_than_meter, d.no_gradient, d.target_version_id, d.calibration_id "
            + "from verdict d join reading r on r.id = d.reading_id join measuring_point p on p.id = r.point_id "
            + "where p.enclosure_id = ? and d.replaced_at is null order by r.taken_at, p.role";

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingIntake intake;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Readings readings;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Meters meters;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private MeterFacts meter;
    private SpeciesFacts species;
    private Home home;
    private Instant now;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        meter = collection.meter(site);
        species = collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        home = collection.home(site, keeper, species);
        now = clock.instant();
    }

    @Test
    void judgesAsReadingsThatComeOneByOneAreJudged() {
        Home other = collection.home(site, keeper, species);
        turn(home);
        turn(other);
        List<Instant> times =
                IntStream.range(1, 30).mapToObj(minute -> at(minute)).toList();
        times.forEach(at -> logOneByOne(other, at));
        take(times.stream().flatMap(at -> visit(home, at).stream()).toList());
        assertThat(verdicts(home)).isEqualTo(verdicts(other));
    }

    @Test
    void judgesWithStatesThatChangeOnTheWay() {
        turn(home);
        take(IntStream.range(1, 30)
                .mapToObj(minute -> at(minute))
                .flatMap(at -> visit(home, at).stream())
                .toList());
        assertThat(verdicts(home)).extracting(row -> row.get("STATE")).contains("ON_TARGET", "PLANNED_OFF");
    }

    @Test
    void takesTheSameSheetOnce() {
        take(visit(home, at(1)));
        assertThat(take(visit(home, at(1)))).isEqualTo(new SheetsTaken(0, 0, 4, 0, List.of()));
    }

    @Test
    void countsWhatStandsTwiceInOneSheetOnce() {
        SheetReading reading = said(home.basking(), 4.5, at(1));
        assertThat(take(List.of(reading, reading))).isEqualTo(new SheetsTaken(1, 1, 1, 0, List.of()));
    }

    @Test
    void leavesOutAndTellsWhatIsOnRecordWithAnotherAmount() {
        take(List.of(said(home.basking(), 4.5, at(1))));
        SheetReading other = said(home.basking(), 5.4, at(1));
        assertThat(take(List.of(other)))
                .isEqualTo(new SheetsTaken(0, 0, 0, 1, List.of(new SheetsTaken.Differing(other, 4.5))));
    }

    @Test
    void looksWithoutStoring() {
        intake.look(site.id(), visit(home, at(1)).iterator());
        assertThat(intake.look(site.id(), visit(home, at(1)).iterator()))
                .isEqualTo(new SheetsTaken(1, 4, 0, 0, List.of()));
    }

    @Test
    void looksAtWhatIsOnRecord() {
        take(visit(home, at(1)));
        assertThat(intake.look(site.id(), visit(home, at(1)).iterator()).known())
                .isEqualTo(4);
    }

    @Test
    void putsASecondSheetOfAVisitIntoTheSameVisit() {
        take(List.of(said(home.basking(), 4.5, at(1))));
        assertThat(take(List.of(said(home.shade(), 0.1, at(1)))).visits()).isZero();
    }

    @Test
    void judgesAVisitAnewThatAnotherSheetAddsTo() {
        take(List.of(said(home.basking(), 4.5, at(1)), said(home.shade(), 2.5, at(1))));
        take(List.of(said(home.gradient(), 3.0, at(1))));
        assertThat(verdicts(home))
                .filteredOn(row -> "GRADIENT".equals(row.get("ROLE")))
                .extracting(row -> row.get("STATE"))
                .containsExactly("ON_TARGET");
    }

    @Test
    void makesTheNewestReadingTheOneAtHand() {
        take(List.of(said(home.basking(), 1.7, at(2)), said(home.basking(), 4.5, at(1))));
        assertThat(newest(home.basking()).flatMap(view -> view.reading().state()))
                .contains(State.TOO_WEAK);
    }

    @Test
    void keepsTheNameOfSomebodyUnknown() {
        take(List.of(said(home.basking(), 4.5, at(1), "Odile")));
        assertThat(database.queryForList(
                        "select taken_by from visit where enclosure_id = ?", String.class, home.enclosureId()))
                .containsExactly("Odile");
    }

    @Test
    void marksWhatIsKnownToTheDayAlone() {
        SheetReading said = new SheetReading(
                home.enclosureId(), home.basking().id(), meter.id(), 4.5, at(1), true, Optional.of("Odile"));
        take(List.of(said));
        long id = newest(home.basking()).orElseThrow().reading().readingId();
        assertThat(readings.recorded(site.id(), id))
                .returns(true, RecordedReading::dayOnly)
                .returns(Optional.of("Odile"), RecordedReading::nameOnSheet);
    }

    @Test
    void knowsAPersonByName() {
        SignedIn other = collection.person(site, Role.KEEPER);
        take(List.of(said(home.basking(), 4.5, at(1), other.fullName().toUpperCase(Locale.ROOT))));
        assertThat(database.queryForList(
                        "select person_id from visit where enclosure_id = ?", Long.class, home.enclosureId()))
                .containsExactly(other.personId());
    }

    @Test
    void refusesAPointOfAnotherSite() {
        SiteFacts elsewhere = collection.site();
        PointFacts point = collection
                .home(
                        elsewhere,
                        collection.person(elsewhere, Role.KEEPER),
                        collection.species(elsewhere, "Iguana iguana"))
                .basking();
        assertThatThrownBy(() -> take(List.of(said(home.basking(), 4.5, at(1)), said(point, 4.5, at(1)))))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void storesNothingIfAnythingIsRefused() {
        SheetReading bad = new SheetReading(home.enclosureId(), -1, meter.id(), 1.0, at(400), false, Optional.empty());
        List<SheetReading> many = new ArrayList<>(visit(home, at(1)));
        many.add(bad);
        assertThatThrownBy(() -> take(many)).isInstanceOf(NotFoundException.class);
        assertThat(newest(home.basking())).isEmpty();
    }

    /** Planned off in the middle, with another calibration towards the end. */
    private void turn(Home at) {
        enclosures.planOff(
                site.id(),
                new PlannedOffTime(at.enclosureId(), at(10), Optional.of(at(15)), "Winter rest"),
                keeper.personId());
        Instant calibrated = at(20);
        if (meters.calibrationAt(meter.id(), calibrated).isEmpty()) {
            meters.calibrate(
                    site.id(),
                    meter.id(),
                    new NewCalibration(calibrated, 0.5, LocalDate.parse("2999-01-01"), "half"),
                    keeper.personId());
        }
    }

    private Instant at(int minutes) {
        return now.plus(Duration.ofMinutes(minutes));
    }

    private SheetsTaken take(List<SheetReading> said) {
        Visitor by = new Visitor(site.id(), keeper.personId());
        return Optional.ofNullable(transaction.execute(status -> intake.take(by, said.iterator())))
                .orElseThrow();
    }

    private List<SheetReading> visit(Home there, Instant at) {
        return amounts(there).entrySet().stream()
                .map(read -> said(read.getKey(), read.getValue(), at))
                .toList();
    }

    private static Map<PointFacts, Double> amounts(Home there) {
        return Map.of(there.basking(), 4.5, there.gradient(), 2.0, there.shade(), 0.1, there.nearest(), 9.0);
    }

    private void logOneByOne(Home there, Instant at) {
        UUID visit = UUID.randomUUID();
        amounts(there)
                .forEach((point, amount) -> logging.log(
                        new Visitor(site.id(), keeper.personId()),
                        new Entry(
                                UUID.randomUUID(),
                                new VisitPlace(visit, there.enclosureId(), point.id()),
                                meter.id(),
                                amount,
                                at)));
    }

    private SheetReading said(PointFacts point, double amount, Instant at) {
        return new SheetReading(point.enclosureId(), point.id(), meter.id(), amount, at, false, Optional.empty());
    }

    private SheetReading said(PointFacts point, double amount, Instant at, String takenBy) {
        return new SheetReading(point.enclosureId(), point.id(), meter.id(), amount, at, false, Optional.of(takenBy));
    }

    private List<Map<String, Object>> verdicts(Home there) {
        return database.queryForList(VERDICTS, there.enclosureId());
    }

    private Optional<ReadingView> newest(PointFacts point) {
        return readings
                .latestIn(site.id(), point.enclosureId(), List.of(point))
                .getOrDefault(point.id(), List.of())
                .stream()
                .filter(view -> view.reading().quantity() == Quantity.UV_INDEX)
                .findFirst();
    }
}
