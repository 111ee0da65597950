package dapple.rig;

import static dapple.rig.RigExamples.hanging;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.enclosure.Enclosures;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.light.cover.Filter.Rectangle;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import jakarta.persistence.EntityManagerFactory;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;

@StorageTest
@TestPropertySource(properties = "spring.jpa.properties.hibernate.generate_statistics=true")
class RigsStorageTest {
    /** Seconds that pass while a test runs, h. */
    private static final double A_MINUTE = 1.0 / 60;

    @Autowired
    private TestCollection collection;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private BurnHours burnHours;

    @Autowired
    private EntityManagerFactory entities;

    @Autowired
    private Clock clock;

    @Autowired
    private Lamps lamps;

    private SiteFacts site;
    private SignedIn lead;
    private long roomId;
    private long enclosureId;
    private Instant now;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        roomId = enclosures.addRoom(site.id(), "Dry room", 1);
        enclosureId = enclosure("E1");
        now = clock.instant();
    }

    static Stream<Cover> covers() {
        Provenance measured = new Provenance(SourceMark.MEASURED, "12 March, meter M2");
        Provenance guessed = new Provenance(SourceMark.FROM_MEMORY, "a label");
        Rectangle over = new Rectangle(0.1, 0.1, 0.5, 0.4);
        return Stream.of(
                new Cover("lid", Optional.of(0.9), Optional.of(over), new CoverMaterial.Weave(3e-4, 2e-3, guessed), 2),
                new Cover(
                        "glass",
                        Optional.of(0.5),
                        Optional.empty(),
                        new CoverMaterial.Passing(
                                false,
                                Map.of(
                                        Quantity.UV_INDEX, new CoverTransmittance(0.04, measured),
                                        Quantity.ILLUMINANCE, new CoverTransmittance(0.9, guessed))),
                        1),
                new Cover(
                        "old mesh", Optional.empty(), Optional.empty(), new CoverMaterial.Passing(true, Map.of()), 1));
    }

    @ParameterizedTest
    @MethodSource("covers")
    void aCoverIsKeptAsItWasSaid(Cover cover) {
        make(enclosureId, now, new CoverStep.Put(cover));
        assertThat(rig().covers()).extracting(CoverFacts::cover).containsExactly(cover);
    }

    static Stream<FurnitureShape> shapes() {
        return Stream.of(
                new Block(new Vec(0.1, 0.2, 0.3), new Vec(0.4, 0.6, 0.5), 20),
                new Post(new Vec(0.1, 0.2, 0), 0.3, 0.05),
                new Branch(new Vec(0.1, 0.2, 0.3), new Vec(0.9, 0.2, 0.6), 0.02));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void furnitureIsKeptAsItWasSaid(FurnitureShape shape) {
        Furniture item = new Furniture("branch", shape, true);
        make(enclosureId, now, new FurnitureStep.Put(item));
        assertThat(rig().furniture()).extracting(FurnitureFacts::furniture).containsExactly(item);
    }

    @Test
    void furnitureThatIsMovedStandsElsewhereFromThenOn() {
        Furniture before = new Furniture("slab", new Post(new Vec(0.1, 0.2, 0), 0.3, 0.05), true);
        Furniture after = new Furniture("slab", new Post(new Vec(0.7, 0.2, 0), 0.3, 0.05), true);
        make(enclosureId, daysAgo(3), new FurnitureStep.Put(before));
        make(
                enclosureId,
                daysAgo(1),
                new FurnitureStep.Move(rig().furniture().get(0).id(), after));
        assertThat(rigs.at(site.id(), enclosureId, daysAgo(2)).furniture())
                .extracting(FurnitureFacts::furniture)
                .containsExactly(before);
        assertThat(rig().furniture()).extracting(FurnitureFacts::furniture).containsExactly(after);
    }

    @Test
    void furnitureThatIsRemovedIsGone() {
        make(
                enclosureId,
                daysAgo(3),
                new FurnitureStep.Put(new Furniture("slab", shapes().findFirst().get(), true)));
        make(
                enclosureId,
                daysAgo(1),
                new FurnitureStep.Remove(rig().furniture().get(0).id()));
        assertThat(rig().isEmpty()).isTrue();
    }

    @Test
    void aSecondLayerLeavesTheMeshAsItIs() {
        Cover mesh = RigExamples.mesh(Optional.of(0.9));
        make(enclosureId, daysAgo(3), new CoverStep.Put(mesh));
        make(
                enclosureId,
                daysAgo(1),
                new CoverStep.SetLayers(rig().covers().get(0).id(), 2));
        assertThat(rig().covers()).extracting(CoverFacts::cover).containsExactly(mesh.withLayers(2));
    }

    @Test
    void aCoverIsReplacedAndTakenOff() {
        make(enclosureId, daysAgo(3), new CoverStep.Put(RigExamples.mesh(Optional.of(0.9))));
        make(
                enclosureId,
                daysAgo(2),
                new CoverStep.Replace(rig().covers().get(0).id(), RigExamples.sheet(0.9)));
        assertThat(rig().covers()).extracting(facts -> facts.cover().name()).containsExactly("front glass");
        make(
                enclosureId,
                daysAgo(1),
                new CoverStep.TakeOff(rig().covers().get(0).id()));
        assertThat(rig().covers()).isEmpty();
    }

    @Test
    void aSiteShowsItsRigsInAsManyStatementsHoweverManyThereAre() {
        furnished("X1");
        long few = statements();
        furnished("X2");
        furnished("X3");
        assertThat(statements()).isEqualTo(few);
        assertThat(rigs.nowAtSite(site.id())).hasSize(3);
    }

    @Test
    void aSitesRigsAreThoseOfItsEnclosures() {
        long furnished = furnished("X1");
        assertThat(rigs.nowAtSite(site.id()).get(furnished)).isEqualTo(rigs.at(site.id(), furnished, clock.instant()));
    }

    @Test
    void anotherSitesRigsAreNotShown() {
        furnished("X1");
        assertThat(rigs.nowAtSite(collection.site().id())).isEmpty();
    }

    @Test
    void theLastChangeOfEachEnclosureIsTheNewestNotTheOneRecordedLast() {
        fit(lamp(), enclosureId, daysAgo(1));
        make(enclosureId, daysAgo(4), new CoverStep.Put(RigExamples.sheet(0.9)));
        assertThat(rigs.lastChanges(site.id()).values())
                .extracting(RigChangeFacts::kind)
                .containsExactly(RigChangeKind.LAMP_FITTED);
    }

    @Test
    void aTimerDoesNotChangeTheLight() {
        fit(lamp(), enclosureId, daysAgo(4));
        long fitting = rigs.at(site.id(), enclosureId, clock.instant())
                .fittings()
                .get(0)
                .id();
        make(
                enclosureId,
                daysAgo(1),
                new LampStep.SetTimer(fitting, Optional.of(RigExamples.tenHours()), Optional.empty()));
        assertThat(rigs.lastLightChange(site.id(), enclosureId).map(RigChangeFacts::kind))
                .contains(RigChangeKind.LAMP_FITTED);
        assertThat(rigs.at(site.id(), enclosureId, clock.instant())
                        .newestOfLight()
                        .map(RigChangeFacts::kind))
                .contains(RigChangeKind.LAMP_FITTED);
        assertThat(rigs.lastLightChanges(site.id()).get(enclosureId))
                .isEqualTo(rigs.lastLightChange(site.id(), enclosureId).orElseThrow());
    }

    @Test
    void burnHoursAreThoseAtEntryAndTheTimers() {
        LampFacts lamp = lamp();
        Instant noon = Instant.parse("2026-01-10T12:00:00Z");
        fit(lamp, enclosureId, noon);
        // 10 h a day from 8 to 18 in London in winter, which is UTC: 6 h on the 10th, 10 h on the 11th, 1 h on the
        // 12th.
        assertThat(burnHours.at(site.id(), lamp.id(), Instant.parse("2026-01-12T09:00:00Z")))
                .contains(17.0);
    }

    @Test
    void burnHoursEndWithTheFitting() {
        LampFacts lamp = lamp();
        fit(lamp, enclosureId, Instant.parse("2026-01-10T00:00:00Z"));
        make(
                enclosureId,
                Instant.parse("2026-01-11T00:00:00Z"),
                new LampStep.TakeOut(rig().fittings().get(0).id()));
        assertThat(burnHours.atSite(site.id(), now)).containsEntry(lamp.id(), 10.0);
    }

    @Test
    void burnHoursAreNotKnownWithoutATimer() {
        LampFacts lamp = lamp();
        Hanging untimed = new Hanging("spot", Optional.empty(), Optional.empty(), Optional.empty());
        make(enclosureId, daysAgo(2), new LampStep.Fit(lamp.id(), untimed));
        assertThat(burnHours.at(site.id(), lamp.id(), now)).isEmpty();
        assertThat(burnHours.atSite(site.id(), now)).doesNotContainKey(lamp.id());
    }

    @Test
    void aLampInStoreHasItsHoursAtEntry() {
        LampFacts lamp = lamp();
        assertThat(burnHours.at(site.id(), lamp.id(), now).orElseThrow())
                .isCloseTo(lamp.burnHoursAtEntry().orElseThrow(), within(A_MINUTE));
    }

    @Test
    void burnHoursAreNotKnownWhereNobodyKnowsThoseAtEntry() {
        long model = collection.lampModel(site, LampClass.TUBE_T5).id();
        long lampId =
                lamps.add(site.id(), new NewLamp("from the shelf", model, Optional.empty(), Optional.empty(), "shelf"));
        fit(lamps.get(site.id(), lampId), enclosureId, daysAgo(2));
        assertThat(burnHours.at(site.id(), lampId, now)).isEmpty();
        assertThat(burnHours.atSite(site.id(), now)).doesNotContainKey(lampId);
        assertThat(burnHours.within(site.id(), rig(), daysAgo(1), now, ZoneOffset.UTC))
                .containsKey(lampId);
    }

    @Test
    void aMovedLampHangsSinceItWasFitted() {
        LampFacts lamp = lamp();
        fit(lamp, enclosureId, daysAgo(5));
        make(enclosureId, daysAgo(2), new LampStep.Move(rig().fittings().get(0).id(), "end", Optional.empty()));
        assertThat(burnHours.fittedSince(site.id(), lamp.id())).contains(daysAgo(5));
        assertThat(burnHours.fittedSince(site.id())).containsEntry(lamp.id(), daysAgo(5));
    }

    @Test
    void aLampTakenOutAndFittedAgainHangsSinceThen() {
        LampFacts lamp = lamp();
        fit(lamp, enclosureId, daysAgo(5));
        make(
                enclosureId,
                daysAgo(3),
                new LampStep.TakeOut(rig().fittings().get(0).id()));
        assertThat(burnHours.fittedSince(site.id(), lamp.id())).isEmpty();
        fit(lamp, enclosureId, daysAgo(2));
        assertThat(burnHours.fittedSince(site.id(), lamp.id())).contains(daysAgo(2));
    }

    @Test
    void aLampInAnotherEnclosureHangsThereSinceItCame() {
        LampFacts lamp = lamp();
        fit(lamp, enclosureId, daysAgo(5));
        make(
                enclosureId,
                daysAgo(3),
                new LampStep.TakeOut(rig().fittings().get(0).id()));
        fit(lamp, enclosure("E2"), daysAgo(3));
        assertThat(burnHours.fittedSince(site.id(), lamp.id())).contains(daysAgo(3));
    }

    /** An enclosure with two lamps, a cover and a slab. */
    private long furnished(String code) {
        long enclosure = enclosure(code);
        FirstRig found = new FirstRig(
                List.of(new LampStep.Fit(lamp().id(), hanging("tube")), new LampStep.Fit(lamp().id(), hanging("spot"))),
                covers().toList(),
                List.of(new Furniture("slab", shapes().findFirst().orElseThrow(), true)));
        changing.setUpFirst(entry(enclosure, daysAgo(9)), found);
        return enclosure;
    }

    private long statements() {
        Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
        long before = statistics.getPrepareStatementCount();
        rigs.nowAtSite(site.id());
        return statistics.getPrepareStatementCount() - before;
    }

    private void fit(LampFacts lamp, long enclosure, Instant at) {
        make(enclosure, at, new LampStep.Fit(lamp.id(), hanging("basking tube")));
    }

    private void make(long enclosure, Instant at, RigStep step) {
        changing.make(entry(enclosure, at), step);
    }

    private RigEntry entry(long enclosure, Instant at) {
        return new RigEntry(
                site.id(), enclosure, at, "for a test", lead.personId(), UUID.randomUUID(), Optional.empty());
    }

    private Rig rig() {
        return rigs.at(site.id(), enclosureId, clock.instant());
    }

    private LampFacts lamp() {
        return collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
    }

    private long enclosure(String code) {
        return enclosures.add(site.id(), roomId, code, 1, Optional.empty());
    }

    private Instant daysAgo(int days) {
        return now.minus(Duration.ofDays(days));
    }
}
