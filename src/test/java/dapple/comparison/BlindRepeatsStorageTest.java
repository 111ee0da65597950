package dapple.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Correction;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.ReadingWithdrawing;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@StorageTest
class BlindRepeatsStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Sites sites;

    @Autowired
    private JdbcClient database;

    @Autowired
    private WaitingRepeats waiting;

    @Autowired
    private RepeatsAsked asked;

    @Autowired
    private Upkeeping upkeeping;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private ReadingWithdrawing withdrawing;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn keeper;
    private SignedIn other;
    private MeterFacts meter;
    private Home home;
    private Drawn drawn;

    @BeforeEach
    void furnish() {
        site = collection.site();
        drawn = Drawn.at(site, sites, database);
        keeper = Drawn.asked(collection.person(site, Role.KEEPER));
        other = Drawn.asked(collection.person(site, Role.KEEPER));
        meter = collection.meter(site);
        home = collection.home(site, keeper, collection.species(site, "Pogona vitticeps"));
    }

    @Test
    void aDrawnReadingWaitsForSomebodyElse() {
        read(keeper, drawn.key(), 3.0);
        assertThat(waiting.forOne(other))
                .singleElement()
                .matches(one -> one.pointId() == home.basking().id());
    }

    @Test
    void itDoesNotWaitForWhoReadItFirst() {
        read(keeper, drawn.key(), 3.0);
        assertThat(waiting.forOne(keeper)).isEmpty();
    }

    @Test
    void nineInTenAreNotAskedForAgain() {
        read(keeper, drawn.otherKey(), 3.0);
        assertThat(waiting.forOne(other)).isEmpty();
    }

    @Test
    void whatStoodADayAgoWaitsNoLonger() {
        read(keeper, drawn.key(), 3.0, Duration.ofHours(25));
        assertThat(waiting.forOne(other)).isEmpty();
    }

    @Test
    void aSiteThatDoesNotAskDrawsNothing() {
        sites.settle(site.id(), sites.settingsVersion(site.id()), Settings.USUAL);
        read(keeper, drawn.key(), 3.0);
        assertThat(waiting.forOne(other)).isEmpty();
    }

    @Test
    void ofATemperatureNoRatioIsAskedFor() {
        MeterFacts thermometer = collection.meter(site, Quantity.AIR_TEMPERATURE);
        read(keeper, drawn.key(), 31.0, Duration.ZERO, thermometer);
        assertThat(waiting.forOne(other)).isEmpty();
    }

    @Test
    void theSecondReadingBelongsToTheFirst() {
        read(keeper, drawn.key(), 3.0);
        read(other, drawn.otherKey(), 3.3);
        assertThat(asked.lately(site.id()))
                .singleElement()
                .matches(pair -> pair.ratio().orElseThrow() == 3.3 / 3.0);
    }

    @Test
    void whoReadFirstCannotAnswerHimself() {
        read(keeper, drawn.key(), 3.0);
        read(keeper, drawn.otherKey(), 3.3);
        assertThat(waiting.forOne(other)).hasSize(1);
    }

    /** So that repeats of repeats do not go on for ever. */
    @Test
    void whatAnswersIsNotDrawnItself() {
        read(keeper, drawn.key(), 3.0);
        read(other, drawn.key(), 3.3);
        assertThat(asked.lately(site.id())).hasSize(1);
    }

    @Test
    void aWithdrawnAnswerLeavesTheFirstWaiting() {
        read(keeper, drawn.key(), 3.0);
        long answer = read(other, drawn.otherKey(), 3.3);
        withdrawing.withdraw(Visitor.of(other), answer, "wrong point");
        assertThat(waiting.forOne(other)).hasSize(1);
    }

    @Test
    void aWithdrawnFirstReadingWaitsForNobody() {
        long first = read(keeper, drawn.key(), 3.0);
        withdrawing.withdraw(Visitor.of(keeper), first, "wrong point");
        assertThat(waiting.forOne(other)).isEmpty();
    }

    @Test
    void aCorrectedReadingTakesThePlaceOfTheMistyped() {
        long first = read(keeper, drawn.key(), 30);
        logging.correct(Visitor.of(keeper), first, new Correction(UUID.randomUUID(), 3.0, "typed 30"));
        read(other, drawn.otherKey(), 3.3);
        assertThat(asked.lately(site.id()))
                .singleElement()
                .matches(pair -> pair.first().amount() == 3.0);
    }

    @Test
    void todayCountsWhatWaits() {
        read(keeper, drawn.key(), 3.0);
        assertThat(upkeeping.today(other).repeats()).isEqualTo(1);
    }

    @Test
    void anotherSiteSeesNothingOfIt() {
        read(keeper, drawn.key(), 3.0);
        assertThat(waiting.forOne(collection.person(collection.site(), Role.KEEPER)))
                .isEmpty();
    }

    private long read(SignedIn who, UUID key, double amount) {
        return read(who, key, amount, Duration.ZERO);
    }

    private long read(SignedIn who, UUID key, double amount, Duration ago) {
        return read(who, key, amount, ago, meter);
    }

    private long read(SignedIn who, UUID key, double amount, Duration ago, MeterFacts with) {
        VisitPlace place = new VisitPlace(
                UUID.randomUUID(), home.enclosureId(), home.basking().id());
        return logging.log(
                Visitor.of(who),
                new Entry(key, place, with.id(), amount, clock.instant().minus(ago)));
    }
}
