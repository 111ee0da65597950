package dapple.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.geometry.Vec;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.EnclosureScenes;
import dapple.prediction.Outlook;
import dapple.rig.Furniture;
import dapple.rig.FurnitureShape;
import dapple.rig.Hanging;
import dapple.rig.Rig;
import dapple.rig.RigChangeKind;
import dapple.rig.RigEntry;
import dapple.rig.RigRefusedException;
import dapple.rig.RigRefusedException.Reason;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import dapple.rig.StaleRigException;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.SiteFacts;
import dapple.site.TakenException;
import dapple.species.SpeciesFacts;
import dapple.testing.DraftedHomes;
import dapple.testing.DraftedHomes.Drafted;
import dapple.testing.RiggedHomes;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.orm.ObjectOptimisticLockingFailureException;

/** A tube under which an enclosure is lit, and drafts of it. */
@StorageTest
class InstallingStorageTest {
    /** The draft and the rig hold the same numbers; directions are made one long again when they are read. */
    private static final double SAME = 1e-9;

    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private DraftedHomes drafted;

    @Autowired
    private Drafts drafts;

    @Autowired
    private Installing installing;

    @Autowired
    private Rigs rigs;

    @Autowired
    private EnclosureScenes scenes;

    @Autowired
    private Outlook outlook;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private SpeciesFacts skink;
    private Home home;
    private DraftPlace place;
    private LampFacts free;

    @BeforeEach
    void furnish() {
        Drafted at = drafted.lit();
        site = at.site();
        lead = at.lead();
        skink = at.skink();
        home = at.home();
        place = at.place();
        free = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
    }

    @Test
    void aDraftIsReadAsItWasStored() {
        DraftRig rig = altered();
        assertThat(draft(drafts.make(place, "Plan A", rig, lead.personId())).rig())
                .isEqualTo(rig);
    }

    @Test
    void twoWhoGiveOneNameMakeOneDraft() {
        List<Throwable> thrown = Together.run(() -> make("Plan A"), () -> make("Plan A"));
        assertThat(thrown).singleElement().isInstanceOf(TakenException.class);
    }

    @Test
    void anotherEnclosureMayHaveTheSameName() {
        make("Plan A");
        Home other = homes.unlit(site, lead, skink);
        DraftPlace elsewhere = new DraftPlace(site.id(), other.enclosureId());
        assertThat(drafts.make(elsewhere, "Plan A", DraftRig.empty(), lead.personId()))
                .isPositive();
    }

    @Test
    void aStaleDraftIsNotChanged() {
        long id = make("Plan A");
        DraftSeen seen = new DraftSeen(id, 0);
        drafts.change(place, seen, "Plan B", altered(), lead.personId());
        assertThatThrownBy(() -> drafts.change(place, seen, "Plan C", altered(), lead.personId()))
                .isInstanceOf(ObjectOptimisticLockingFailureException.class);
    }

    @Test
    void aClosedDraftIsNotChanged() {
        long id = make("Plan A");
        drafts.discard(place, new DraftSeen(id, 0), lead.personId());
        assertThatThrownBy(() -> drafts.change(place, seen(id), "Plan B", altered(), lead.personId()))
                .isInstanceOf(ConflictException.class);
    }

    @Test
    void anotherSiteDoesNotFindIt() {
        long id = make("Plan A");
        DraftPlace strange = new DraftPlace(collection.site().id(), home.enclosureId());
        assertThatThrownBy(() -> drafts.get(strange, id)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void whatIsInstalledGivesTheLightThatTheDraftDid() {
        long id = drafts.make(place, "Plan A", altered(), lead.personId());
        Map<String, Double> foreseen = light(under(draft(id).rig()));
        install(id);
        assertSameLight(foreseen, light(installed()));
    }

    @Test
    void whatIsInstalledIsOneChangeOfTheRig() {
        long before = rigs.changeCount(site.id(), home.enclosureId());
        install(drafts.make(place, "Plan A", altered(), lead.personId()));
        assertThat(rigs.changes(site.id(), home.enclosureId(), 0))
                .hasSize((int) before + 1)
                .first()
                .satisfies(change -> assertThat(change.kind()).isEqualTo(RigChangeKind.REBUILT));
    }

    @Test
    void nothingIsLeftToDoAfterwards() {
        long id = drafts.make(place, "Plan A", altered(), lead.personId());
        DraftRig rig = draft(id).rig();
        install(id);
        assertThat(RigDifference.between(now(), DraftRig.of(now()), drafts.stock(site.id()))
                        .isEmpty())
                .isTrue();
        assertThat(now().fittings())
                .extracting(fitting -> fitting.lamp().id())
                .hasSize(rig.lamps().size());
    }

    @Test
    void theDraftIsClosedByTheChange() {
        long id = drafts.make(place, "Plan A", altered(), lead.personId());
        long change = install(id);
        assertThat(draft(id).installedBy()).contains(change);
    }

    @Test
    void theSameEntryTwiceIsOneChange() {
        long id = drafts.make(place, "Plan A", altered(), lead.personId());
        RigEntry entry = entry();
        long first = installing.install(seen(id), entry);
        assertThat(installing.install(seen(id), entry)).isEqualTo(first);
    }

    @Test
    void ofTwoAtOnceOneInstalls() {
        long one = drafts.make(place, "Plan A", altered(), lead.personId());
        long other = drafts.make(place, "Plan B", lower(), lead.personId());
        RigEntry first = entry();
        RigEntry second = entry();
        List<Throwable> thrown =
                Together.run(() -> installing.install(seen(one), first), () -> installing.install(seen(other), second));
        assertThat(thrown).singleElement().isInstanceOf(StaleRigException.class);
        assertThat(drafts.of(place)).filteredOn(DraftFacts::isOpen).hasSize(1);
    }

    @Test
    void ofTwoWhoInstallOneDraftAtOnceOneDoes() {
        long id = drafts.make(place, "Plan A", altered(), lead.personId());
        RigEntry first = entry();
        RigEntry second = entry();
        List<Throwable> thrown =
                Together.run(() -> installing.install(seen(id), first), () -> installing.install(seen(id), second));
        assertThat(thrown).singleElement().isInstanceOf(ConflictException.class);
    }

    @Test
    void aLampThatHangsElsewhereIsRefusedWithWhere() {
        Home other = homes.unlit(site, lead, skink);
        homes.light(site, lead, other, free, RiggedHomes.over());
        long id = drafts.make(place, "Plan A", altered(), lead.personId());
        assertThatThrownBy(() -> install(id)).isInstanceOfSatisfying(RigRefusedException.class, refused -> {
            assertThat(refused.reason()).isEqualTo(Reason.LAMP_HANGS);
            assertThat(refused.where()).isNotEmpty();
        });
    }

    @Test
    void whatIsRefusedLeavesEverythingAsItWas() {
        Home other = homes.unlit(site, lead, skink);
        homes.light(site, lead, other, free, RiggedHomes.over());
        Rig before = now();
        long id = drafts.make(place, "Plan A", altered(), lead.personId());
        assertThatThrownBy(() -> install(id)).isInstanceOf(RigRefusedException.class);
        assertThat(now()).isEqualTo(before);
        assertThat(draft(id).isOpen()).isTrue();
    }

    @Test
    void aLampStillToBeBoughtCannotHang() {
        DraftLamp bought =
                new DraftLamp(Optional.empty(), new LampPick.Model(free.model().id()), DraftedHomes.hanging(0.5));
        DraftRig rig = new DraftRig(List.of(bought), List.of(), List.of());
        long id = drafts.make(place, "Plan A", rig, lead.personId());
        assertThatThrownBy(() -> install(id)).isInstanceOf(ConflictException.class);
    }

    @Test
    void aLampIsHungOtherwiseAndTimedAtOnce() {
        DraftLamp before = DraftRig.of(now()).lamps().get(0);
        Hanging hanging =
                new Hanging("elsewhere", DraftedHomes.hanging(0.5).mount(), Optional.empty(), Optional.empty());
        DraftRig rig =
                new DraftRig(List.of(new DraftLamp(before.fittingId(), before.lamp(), hanging)), List.of(), List.of());
        install(drafts.make(place, "Plan A", rig, lead.personId()));
        assertThat(now().fittings())
                .singleElement()
                .satisfies(fitting -> assertThat(fitting.hanging()).isEqualTo(hanging));
    }

    private void assertSameLight(Map<String, Double> foreseen, Map<String, Double> given) {
        assertThat(given.keySet()).isEqualTo(foreseen.keySet()).isNotEmpty();
        given.forEach((point, amount) ->
                assertThat(amount).as(point).isCloseTo(foreseen.getOrDefault(point, Double.NaN), within(SAME)));
    }

    private Map<String, Double> light(EnclosureScene scene) {
        Map<String, Double> light = new TreeMap<>();
        outlook.of(scene)
                .atPoints()
                .forEach((point, amounts) -> amounts.forEach(
                        (quantity, predicted) -> light.put(point + " " + quantity, predicted.amount())));
        return light;
    }

    private EnclosureScene installed() {
        return scenes.at(site.id(), home.enclosureId(), clock.instant(), Optional.empty(), Optional.empty());
    }

    private EnclosureScene under(DraftRig rig) {
        return installed().under(RigScene.of(rig.rig(home.enclosureId(), drafts.stock(site.id()), clock.instant())));
    }

    /** The tube hangs lower, another comes, the mesh is doubled, the slab goes, a branch comes. */
    private DraftRig altered() {
        DraftRig installed = DraftRig.of(now());
        DraftLamp before = installed.lamps().get(0);
        DraftCover mesh = installed.covers().get(0);
        Furniture branch = new Furniture(
                "branch", new FurnitureShape.Branch(new Vec(0.1, 0.3, 0.1), new Vec(0.5, 0.3, 0.3), 0.02), true);
        return new DraftRig(
                List.of(
                        new DraftLamp(before.fittingId(), before.lamp(), DraftedHomes.hanging(0.671234)),
                        new DraftLamp(Optional.empty(), new LampPick.Stock(free.id()), DraftedHomes.hanging(0.69))),
                List.of(new DraftCover(mesh.coverId(), mesh.cover().withLayers(2))),
                List.of(new DraftFurniture(Optional.empty(), branch)));
    }

    private DraftRig lower() {
        DraftLamp before = DraftRig.of(now()).lamps().get(0);
        return new DraftRig(
                List.of(new DraftLamp(before.fittingId(), before.lamp(), DraftedHomes.hanging(0.6))),
                List.of(),
                List.of());
    }

    private long make(String name) {
        return drafts.make(place, name, DraftRig.of(now()), lead.personId());
    }

    private DraftFacts draft(long id) {
        return drafts.get(place, id);
    }

    private DraftSeen seen(long id) {
        return new DraftSeen(id, draft(id).version());
    }

    private Rig now() {
        return rigs.at(site.id(), home.enclosureId(), clock.instant());
    }

    private long install(long id) {
        return installing.install(seen(id), entry());
    }

    private RigEntry entry() {
        return new RigEntry(
                site.id(),
                home.enclosureId(),
                clock.instant().minus(Duration.ofMinutes(1)),
                "",
                lead.personId(),
                UUID.randomUUID(),
                Optional.of(rigs.lastRecorded(site.id(), home.enclosureId())));
    }
}
