package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Facing;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.light.judging.Band;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

/** Several quantities at one point, each judged by its own limits, and only for whom the point serves. */
@StorageTest
class QuantitiesStorageTest {
    private static final UvZone ZONE_3 = new UvZone(3, LightMethod.SUNBEAM);

    /** A basking surface of 38 to 42 °C, for these tests. */
    private static final SourcedLimit WARM_SURFACE = new SourcedLimit(
            Quantity.SURFACE_TEMPERATURE, LimitPlace.BASKING, new Band(38, 42), SourceMark.FROM_MEMORY, "for a test");

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Readings readings;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Animals animals;

    @Autowired
    private Clock clock;

    private final UUID visit = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts species;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        species = collection.species(site, keeper, "Pogona vitticeps", ZONE_3, WARM_SURFACE);
        home = collection.home(site, keeper, species);
    }

    @ParameterizedTest
    @CsvSource({"40, ON_TARGET", "30, TOO_WEAK", "50, TOO_STRONG", "38.5, BORDERLINE"})
    void aSurfaceIsJudgedByItsOwnBand(double celsius, State state) {
        log(home.basking(), Quantity.SURFACE_TEMPERATURE, celsius);
        assertThat(state(home.basking(), Quantity.SURFACE_TEMPERATURE)).contains(state);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ILLUMINANCE", "IRRADIANCE", "UVA", "UVB_IRRADIANCE", "AIR_TEMPERATURE"})
    void aQuantityWithoutLimitsIsNoFinding(Quantity quantity) {
        log(home.basking(), quantity, 20);
        assertThat(view(home.basking(), quantity)).isPresent();
        assertThat(state(home.basking(), quantity)).isEmpty();
    }

    @Test
    void aMissingTargetIsAFindingOfTheUvIndexAlone() {
        Home bare = collection.home(site, keeper, collection.species(site, "Physignathus cocincinus"));
        log(bare.basking(), Quantity.UV_INDEX, 3);
        log(bare.basking(), Quantity.ILLUMINANCE, 12_000);
        assertThat(state(bare.basking(), Quantity.UV_INDEX)).contains(State.NO_TARGET);
        assertThat(state(bare.basking(), Quantity.ILLUMINANCE)).isEmpty();
    }

    @Test
    void quantitiesOfOnePointStandSideBySide() {
        log(home.basking(), Quantity.SURFACE_TEMPERATURE, 40);
        log(home.basking(), Quantity.UV_INDEX, 1.7);
        assertThat(readings.latestIn(site.id(), home.enclosureId(), List.of(home.basking()))
                        .getOrDefault(home.basking().id(), List.of()))
                .extracting(ReadingView::quantity)
                .containsExactly(Quantity.UV_INDEX, Quantity.SURFACE_TEMPERATURE);
    }

    @Test
    void frostIsStoredAsItIs() {
        log(home.shade(), Quantity.AIR_TEMPERATURE, -12.5);
        assertThat(view(home.shade(), Quantity.AIR_TEMPERATURE)
                        .map(view -> view.reading().amount()))
                .contains(-12.5);
    }

    @ParameterizedTest
    @CsvSource({"UV_INDEX, -1", "ILLUMINANCE, -1", "SURFACE_TEMPERATURE, -41", "SURFACE_TEMPERATURE, 121"})
    void whatNoMeterShowsIsRefused(Quantity quantity, double amount) {
        assertThatThrownBy(() -> log(home.basking(), quantity, amount)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void onlyWhomAPointServesIsJudgedThere() {
        SpeciesFacts shy = collection.species(site, keeper, "Correlophus ciliatus", new UvZone(1, LightMethod.SHADE));
        join(shy);
        enclosures.serve(site.id(), home.basking().id(), Served.species(Set.of(species.id())));
        long reading = log(home.basking(), Quantity.UV_INDEX, 4.5);
        assertThat(readings.judged(site.id(), reading))
                .extracting(view -> view.reading().speciesId())
                .containsExactly(Optional.of(species.id()));
    }

    /** Of the other's points: shade that serves nobody here makes no gradient for them. */
    @Test
    void pointsOfOthersMakeNoGradient() {
        SpeciesFacts shy = collection.species(site, keeper, "Correlophus ciliatus", new UvZone(1, LightMethod.SHADE));
        enclosures.serve(site.id(), home.shade().id(), Served.species(Set.of(shy.id())));
        log(home.basking(), Quantity.UV_INDEX, 4.5);
        log(home.shade(), Quantity.UV_INDEX, 0);
        log(home.gradient(), Quantity.UV_INDEX, 1.5);
        assertThat(state(home.gradient(), Quantity.UV_INDEX)).isEmpty();
    }

    @Test
    void aReadingHeldOtherwiseIsContext() {
        log(home.basking(), Quantity.UV_INDEX, 4.5);
        long level = log(home.basking(), Quantity.UV_INDEX, 1.0, Optional.of(Facing.LEVEL));
        assertThat(state(home.basking(), Quantity.UV_INDEX)).contains(State.ON_TARGET);
        assertThat(readings.judged(site.id(), level).get(0).state()).isEmpty();
    }

    @Test
    void howAThermometerIsHeldDoesNotMatter() {
        log(home.basking(), Quantity.SURFACE_TEMPERATURE, 30, Optional.of(Facing.LEVEL));
        assertThat(state(home.basking(), Quantity.SURFACE_TEMPERATURE)).contains(State.TOO_WEAK);
    }

    @Test
    void nothingIsTooWeakWhileTheLampsArePlannedOff() {
        planOff();
        log(home.basking(), Quantity.UV_INDEX, 0);
        assertThat(state(home.basking(), Quantity.UV_INDEX)).contains(State.PLANNED_OFF);
    }

    @Test
    void overTheCeilingIsHarmEvenWhenPlannedOff() {
        planOff();
        log(home.basking(), Quantity.UV_INDEX, 9);
        assertThat(state(home.basking(), Quantity.UV_INDEX)).contains(State.OVER_CEILING);
    }

    @Test
    void theFirstReadingAfterAnInstantIsFound() {
        log(home.shade(), Quantity.UV_INDEX, 0.1);
        Instant from = clock.instant();
        long first = log(home.basking(), Quantity.SURFACE_TEMPERATURE, 40);
        log(home.shade(), Quantity.UV_INDEX, 0.1);
        assertThat(readings.firstAfter(home.enclosureId(), from).map(ReadingTaken::readingId))
                .contains(first);
    }

    @Test
    void beforeAnyReadingThereIsNoneAfterAnInstant() {
        assertThat(readings.firstAfter(home.enclosureId(), clock.instant())).isEmpty();
    }

    private void planOff() {
        Instant begin = clock.instant().minus(Duration.ofDays(1));
        enclosures.planOff(
                site.id(),
                new PlannedOffTime(home.enclosureId(), begin, Optional.empty(), "winter rest"),
                keeper.personId());
    }

    private void join(SpeciesFacts newcomers) {
        long newcomer = animals.add(site.id(), new NewAnimal("newcomer", "Newcomer", newcomers.id()))
                .id();
        Instant before = clock.instant().minus(Duration.ofMinutes(10));
        animals.move(site.id(), new Arrival(newcomer, home.enclosureId(), before, keeper.personId()));
    }

    private Optional<ReadingView> view(PointFacts point, Quantity quantity) {
        return readings
                .latestIn(site.id(), point.enclosureId(), List.of(point))
                .getOrDefault(point.id(), List.of())
                .stream()
                .filter(view -> view.quantity() == quantity)
                .findFirst();
    }

    private Optional<State> state(PointFacts point, Quantity quantity) {
        return view(point, quantity).flatMap(ReadingView::state);
    }

    private long log(PointFacts point, Quantity quantity, double amount) {
        return log(point, quantity, amount, Optional.empty());
    }

    private long log(PointFacts point, Quantity quantity, double amount, Optional<Facing> held) {
        MeterFacts meter = collection.meter(site, quantity);
        VisitPlace place = new VisitPlace(visit, point.enclosureId(), point.id());
        Entry entry = new Entry(UUID.randomUUID(), place, meter.id(), amount, clock.instant(), held);
        return logging.log(Visitor.of(keeper), entry);
    }
}
