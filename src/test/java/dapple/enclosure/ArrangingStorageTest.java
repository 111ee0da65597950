package dapple.enclosure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.light.judging.PointRole;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

@StorageTest
class ArrangingStorageTest {
    private static final InnerSize SIZE = new InnerSize(1.2, 0.6, 0.5);

    @Autowired
    private TestCollection collection;

    @Autowired
    private RoomArranging rooms;

    @Autowired
    private EnclosureArranging enclosures;

    @Autowired
    private PointArranging points;

    @Autowired
    private Enclosures seen;

    @Autowired
    private Animals animals;

    @Autowired
    private JdbcClient database;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private long roomId;
    private long enclosureId;

    @BeforeEach
    void furnish() {
        site = collection.site();
        roomId = rooms.add(site.id(), new RoomChange("Dry room", 1));
        enclosureId = enclosures.add(site.id(), enclosure("E1", Optional.of(SIZE)));
    }

    @Test
    void roomsComeInWalkingOrderWithTheirEnclosures() {
        rooms.add(site.id(), new RoomChange("Quarantine", 0));
        assertThat(rooms.all(site.id())).extracting(row -> row.room().name()).containsExactly("Quarantine", "Dry room");
        assertThat(rooms.all(site.id()).get(1).enclosures())
                .extracting(EnclosureFacts::code)
                .containsExactly("E1");
    }

    @Test
    void namesOfRoomsAreComparedWithoutCase() {
        RoomChange same = new RoomChange("DRY ROOM", 2);
        assertThatThrownBy(() -> rooms.add(site.id(), same)).isInstanceOf(TakenException.class);
    }

    @Test
    void anotherSiteMayUseTheSameNamesAndCodes() {
        SiteFacts other = collection.site();
        long room = rooms.add(other.id(), new RoomChange("Dry room", 1));
        assertThat(enclosures.add(other.id(), new EnclosureChange(room, "E1", 1, Optional.empty())))
                .isNotEqualTo(enclosureId);
    }

    @Test
    void anEnclosureKeepsItsOwnCode() {
        enclosures.change(site.id(), enclosureId, 0, enclosure("e1", Optional.empty()));
        assertThat(enclosures.get(site.id(), enclosureId).state()).isEqualTo(enclosure("e1", Optional.empty()));
    }

    @Test
    void frontAndReachAreKeptUntilNothingIsSaidAnyMore() {
        EnclosureChange said = new EnclosureChange(
                roomId,
                "E1",
                1,
                Optional.empty(),
                Optional.of(FrontKind.ACRYLIC),
                Optional.of(new StatedReach(ReachKind.JUMPS, Optional.of(0.5))));
        enclosures.change(site.id(), enclosureId, 0, said);
        assertThat(enclosures.get(site.id(), enclosureId).state()).isEqualTo(said);
        assertThat(seen.get(site.id(), enclosureId).reach()).isEqualTo(said.reach());
        enclosures.change(site.id(), enclosureId, 1, enclosure("E1", Optional.empty()));
        assertThat(seen.get(site.id(), enclosureId).front()).isEmpty();
        assertThat(seen.get(site.id(), enclosureId).reach()).isEmpty();
    }

    @Test
    void aCodeStaysTakenWhenItsEnclosureIsOutOfUse() {
        enclosures.retire(site.id(), enclosureId);
        EnclosureChange same = enclosure("E1", Optional.empty());
        assertThatThrownBy(() -> enclosures.add(site.id(), same)).isInstanceOf(TakenException.class);
    }

    @Test
    void theSecondOfTwoChangesIsRefused() {
        enclosures.change(site.id(), enclosureId, 0, enclosure("E2", Optional.empty()));
        EnclosureChange late = enclosure("E3", Optional.empty());
        assertThatThrownBy(() -> enclosures.change(site.id(), enclosureId, 0, late))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void theSecondOfTwoChangesToARoomIsRefused() {
        rooms.change(site.id(), roomId, 0, new RoomChange("Warm room", 1));
        RoomChange late = new RoomChange("Cold room", 1);
        assertThatThrownBy(() -> rooms.change(site.id(), roomId, 0, late))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void anEnclosureDoesNotMoveToAnotherSitesRoom() {
        long foreign = rooms.add(collection.site().id(), new RoomChange("Dry room", 1));
        EnclosureChange away = new EnclosureChange(foreign, "E1", 1, Optional.empty());
        assertThatThrownBy(() -> enclosures.change(site.id(), enclosureId, 0, away))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void whatIsOutOfUseIsNotWalked() {
        enclosures.retire(site.id(), enclosureId);
        assertThat(seen.inWalkingOrder(site.id())).isEmpty();
        assertThat(seen.all(site.id())).extracting(EnclosureFacts::isInUse).containsExactly(false);
    }

    @Test
    void whatIsBackInUseIsWalked() {
        enclosures.retire(site.id(), enclosureId);
        enclosures.returnToUse(site.id(), enclosureId);
        assertThat(seen.inWalkingOrder(site.id())).hasSize(1);
    }

    @Test
    void historyKeepsWhenAnEnclosureLeftUse() {
        enclosures.retire(site.id(), enclosureId);
        assertThat(database.sql("select count(*) from enclosure_history where id = ? and retired_at is not null")
                        .param(enclosureId)
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void whatIsLivedInStaysInUse() {
        Home home = lived();
        assertThatThrownBy(() -> enclosures.retire(site.id(), home.enclosureId()))
                .isInstanceOf(LivedInException.class);
        assertThat(enclosures.get(site.id(), home.enclosureId()).isInUse()).isTrue();
    }

    @Test
    void nobodyMovesIntoAnEnclosureOutOfUse() {
        Home home = lived();
        enclosures.retire(site.id(), enclosureId);
        Arrival arrival = new Arrival(home.animal().id(), enclosureId, clock.instant(), keeper().personId());
        assertThatThrownBy(() -> animals.move(site.id(), arrival)).isInstanceOf(ConflictException.class);
    }

    @Test
    void pointsComeInTheOrderOfAVisit() {
        points.add(site.id(), enclosureId, point("P2", 2));
        points.add(site.id(), enclosureId, point("P1", 1));
        assertThat(codes(seen.pointsOf(site.id(), enclosureId))).containsExactly("P1", "P2");
    }

    @Test
    void aCodeOfAPointStaysTakenWhenItIsRetired() {
        PointDetails retired = added("P1");
        points.retire(site.id(), enclosureId, retired.facts().id());
        PointChange same = point(retired.facts().code().toLowerCase(Locale.ROOT), 2);
        assertThatThrownBy(() -> points.add(site.id(), enclosureId, same)).isInstanceOf(TakenException.class);
    }

    @Test
    void noVisitAsksForARetiredPoint() {
        points.retire(site.id(), enclosureId, added("P1").facts().id());
        assertThat(seen.pointsOf(site.id(), enclosureId)).isEmpty();
    }

    @Test
    void theSecondOfTwoChangesToAPointIsRefused() {
        PointDetails point = added("P1");
        points.change(site.id(), point.facts(), point.version(), point("P1", 5));
        PointChange late = point("P3", 1);
        assertThatThrownBy(() -> points.change(site.id(), point.facts(), point.version(), late))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void aPointIsNotFoundInAnotherEnclosure() {
        long other = enclosures.add(site.id(), enclosure("E2", Optional.empty()));
        long pointId = added("P1").facts().id();
        assertThatThrownBy(() -> points.get(site.id(), other, pointId)).isInstanceOf(NotFoundException.class);
    }

    private PointDetails added(String code) {
        points.add(site.id(), enclosureId, point(code, 1));
        return points.all(site.id(), enclosureId).get(0);
    }

    private Home lived() {
        return collection.home(site, keeper(), collection.species(site, "Pogona vitticeps"));
    }

    private SignedIn keeper() {
        return collection.person(site, Role.KEEPER);
    }

    private EnclosureChange enclosure(String code, Optional<InnerSize> size) {
        return new EnclosureChange(roomId, code, 1, size);
    }

    private static PointChange point(String code, int order) {
        Optional<Position> position = Optional.of(new Position(0.5, 0.3, 0.1));
        return new PointChange(new NewPoint(code, "a stone", PointRole.BASKING, Facing.LEVEL, position), order);
    }

    private static List<String> codes(List<PointFacts> points) {
        return points.stream().map(PointFacts::code).toList();
    }
}
