package dapple.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.judging.PointRole;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.Together;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

/** What two people say of one walk, one after the other or in the same moment. */
@StorageTest
class WalkKeepingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RoundArranging arranging;

    @Autowired
    private Rounds rounds;

    @Autowired
    private WalkKeeping keeping;

    @Autowired
    private JdbcClient database;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn one;
    private SignedIn other;
    private WalkKey key;

    @BeforeEach
    void furnish() {
        site = collection.site();
        one = collection.person(site, Role.KEEPER);
        other = collection.person(site, Role.KEEPER);
        long enclosure = collection.emptyEnclosure(site);
        collection.point(site, enclosure, "P1", PointRole.BASKING);
        LocalDate today = LocalDate.ofInstant(clock.instant(), one.zone());
        DueDays days = new DueDays(new Cadence.Every(2), today.minusDays(4), Optional.empty());
        GivenTo.Holders keepers = new GivenTo.Holders(Role.KEEPER);
        long plan = arranging.add(site.id(), new PlanDetails("Round", days, keepers, List.of(enclosure)));
        key = new WalkKey(plan, today);
    }

    @Test
    void twoWhoBeginAtOnceAreOnOneWalk() {
        assertThat(Together.run(() -> begin(one), () -> begin(other))).isEmpty();
        assertThat(rowsOfWalks()).isEqualTo(1);
        assertThat(said().begun().map(Begun::by)).isPresent().get().isIn(one.personId(), other.personId());
    }

    @Test
    void whoBeganFirstStaysOnRecord() {
        begin(one);
        begin(other);
        assertThat(said().begun().map(Begun::by)).contains(one.personId());
    }

    @Test
    void ofTwoWhoGiveItToDifferentPeopleAtOnceTheSecondIsAsked() {
        List<Throwable> thrown = Together.run(
                () -> give(one, 0, new GivenTo.Person(one.personId())),
                () -> give(other, 0, new GivenTo.Person(other.personId())));
        assertThat(thrown).hasSize(1).first().isInstanceOf(ObjectOptimisticLockingFailureException.class);
        assertThat(rowsOfWalks()).isEqualTo(1);
    }

    @Test
    void twoWhoGiveItToTheSamePersonAtOnceAgree() {
        GivenTo same = new GivenTo.Person(other.personId());
        assertThat(Together.run(() -> give(one, 0, same), () -> give(other, 0, same)))
                .isEmpty();
        assertThat(said().givenTo()).contains(same);
        assertThat(rowsOfWalks()).isEqualTo(1);
    }

    @Test
    void twoWhoSayTheSameReasonAtOnceAgree() {
        NotWalked why = new NotWalked(Excuse.Reason.NO_STAFF, "");
        assertThat(Together.run(() -> keeping.excuse(one, key, 0, why), () -> keeping.excuse(other, key, 0, why)))
                .isEmpty();
        assertThat(said().excuse().map(Excuse::reason)).contains(Excuse.Reason.NO_STAFF);
        assertThat(rowsOfWalks()).isEqualTo(1);
    }

    @Test
    void ofTwoWhoSayDifferentReasonsAtOnceTheSecondIsAsked() {
        List<Throwable> thrown = Together.run(
                () -> keeping.excuse(one, key, 0, new NotWalked(Excuse.Reason.NO_STAFF, "")),
                () -> keeping.excuse(other, key, 0, new NotWalked(Excuse.Reason.NO_METER, "")));
        assertThat(thrown).hasSize(1).first().isInstanceOf(ObjectOptimisticLockingFailureException.class);
        assertThat(rowsOfWalks()).isEqualTo(1);
    }

    @Test
    void whoSaysNotWalkedWhileAnotherBeginsIsAsked() {
        begin(one);
        NotWalked why = new NotWalked(Excuse.Reason.NO_STAFF, "");
        assertThatThrownBy(() -> keeping.excuse(other, key, 0, why))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void toBeginTakesTheExcuseBack() {
        keeping.excuse(one, key, 0, new NotWalked(Excuse.Reason.OTHER, "flooded corridor"));
        begin(other);
        assertThat(said().excuse()).isEmpty();
    }

    @Test
    void anOlderWalkIsNotBegun() {
        assertThatThrownBy(() -> keeping.begin(one, key.planId(), key.dueOn().minusDays(2)))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void itIsGivenToNobodyOfAnotherSite() {
        GivenTo stranger = new GivenTo.Person(
                collection.person(collection.site(), Role.KEEPER).personId());
        assertThatThrownBy(() -> give(one, 0, stranger)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void nobodyOfAnotherSiteBeginsIt() {
        SignedIn stranger = collection.person(collection.site(), Role.KEEPER);
        assertThatThrownBy(() -> begin(stranger)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void ofTwoWhoChangeARoundTheSecondIsRefused() {
        PlanFacts plan = arranging.get(site.id(), key.planId());
        List<Long> stops = List.of(collection.emptyEnclosure(site));
        PlanDetails changed = new PlanDetails("Round", plan.days(), plan.givenTo(), stops);
        List<Throwable> thrown = Together.run(
                () -> arranging.change(site.id(), plan.id(), plan.version(), changed),
                () -> arranging.change(site.id(), plan.id(), plan.version(), changed));
        assertThat(thrown).hasSize(1);
        assertThat(arranging.enclosureIds(site.id(), plan.id())).isEqualTo(stops);
    }

    private void begin(SignedIn who) {
        keeping.begin(who, key.planId(), key.dueOn());
    }

    private void give(SignedIn who, long version, GivenTo to) {
        keeping.give(who, key, version, to);
    }

    private WalkSaid said() {
        return rounds.walk(one, key.planId(), key.dueOn()).said();
    }

    private long rowsOfWalks() {
        return database.sql("select count(*) from round_walk where plan_id = ?")
                .param(key.planId())
                .query(Long.class)
                .single();
    }
}
