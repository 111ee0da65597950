package dapple.copying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.draft.DraftFacts;
import dapple.draft.DraftLamp;
import dapple.draft.DraftPlace;
import dapple.draft.Drafts;
import dapple.draft.LampPick;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Served;
import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.CircuitFacts;
import dapple.rig.Circuits;
import dapple.rig.FittingFacts;
import dapple.rig.LampStep;
import dapple.rig.Rig;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.RigScene;
import dapple.rig.Rigs;
import dapple.rig.SceneDocument;
import dapple.site.SiteFacts;
import dapple.species.SpeciesFacts;
import dapple.testing.RiggedHomes;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import dapple.testing.Together;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@StorageTest
class CopyingStorageTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private Copying copying;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Rigs rigs;

    @Autowired
    private RigChanging changing;

    @Autowired
    private Circuits circuits;

    @Autowired
    private Lamps lamps;

    @Autowired
    private Drafts drafts;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn lead;
    private SpeciesFacts species;
    private Home home;
    private EnclosureFacts original;

    @BeforeEach
    void furnish() {
        site = collection.site();
        lead = collection.person(site, Role.LIGHTING_LEAD);
        species = collection.species(site, "Pogona vitticeps");
        home = homes.lit(site, lead, species);
        original = enclosures.get(site.id(), home.enclosureId());
    }

    @Test
    void theLightOfACopyIsThatOfTheOriginal() {
        copy(LampsOfCopies.NEW, "C1", "C2");
        assertThat(scene(copy("C1"))).isEqualTo(scene(original));
        assertThat(scene(copy("C2"))).isEqualTo(scene(original));
    }

    @Test
    void sizeFrontReachAndRoomAreThoseOfTheOriginal() {
        copy(LampsOfCopies.NEW, "C1");
        EnclosureFacts copy = copy("C1");
        assertThat(new EnclosureFacts(
                        original.id(),
                        original.code(),
                        copy.roomId(),
                        copy.room(),
                        copy.size(),
                        copy.retiredAt(),
                        copy.front(),
                        copy.reach()))
                .isEqualTo(original);
    }

    @Test
    void aPointServesTheSameSpeciesButNoAnimalOfAnotherEnclosure() {
        Set<Long> animal = Set.of(home.animal().id());
        enclosures.serve(site.id(), home.basking().id(), new Served(Set.of(species.id()), animal));
        copy(LampsOfCopies.NEW, "C1");
        assertThat(points(copy("C1")).get(0).served()).isEqualTo(Served.species(Set.of(species.id())));
    }

    @Test
    void lampsAreNewOnesOfTheSameModel() {
        copy(LampsOfCopies.NEW, "C1");
        FittingFacts like = rig(original).fittings().get(0);
        FittingFacts hung = rig(copy("C1")).fittings().get(0);
        assertThat(hung.lamp().model()).isEqualTo(like.lamp().model());
        assertThat(hung.hanging()).isEqualTo(like.hanging());
        assertThat(hung.lamp().id()).isNotEqualTo(like.lamp().id());
        assertThat(hung.lamp().burnHoursAtEntry()).contains(0.0);
    }

    @Test
    void usedLampsHaveBurntAsLongAsSaid() {
        copying.make(entry(), plan(LampsOfCopies.USED, 1200, original.roomId(), List.of("C1")));
        assertThat(rig(copy("C1")).fittings().get(0).lamp().burnHoursAtEntry()).contains(1200.0);
    }

    @Test
    void aTagThatIsTakenIsPassedOver() {
        long model = rig(original).fittings().get(0).lamp().model().id();
        lamps.add(site.id(), new NewLamp("c1-1", model, Optional.of(0.0), Optional.empty(), "shelf"));
        copy(LampsOfCopies.NEW, "C1");
        assertThat(rig(copy("C1")).fittings().get(0).lamp().tag()).isEqualTo("C1-2");
    }

    @Test
    void lampsThatComeLaterArePlannedAtTheDesk() {
        copy(LampsOfCopies.LATER, "C1");
        EnclosureFacts copy = copy("C1");
        Rig like = rig(original);
        assertThat(rig(copy).fittings()).isEmpty();
        assertThat(rig(copy).covers()).hasSameSizeAs(like.covers());
        DraftFacts draft = drafts.of(new DraftPlace(site.id(), copy.id())).get(0);
        FittingFacts fitting = like.fittings().get(0);
        LampPick model = new LampPick.Model(fitting.lamp().model().id());
        assertThat(draft.rig().lamps()).containsExactly(new DraftLamp(Optional.empty(), model, fitting.hanging()));
    }

    @Test
    void aCircuitOfAnotherRoomIsNotCopied() {
        CircuitFacts here = circuits.add(site.id(), Optional.of(original.roomId()), "A1");
        FittingFacts like = rig(original).fittings().get(0);
        LampStep fed = new LampStep.SetTimer(like.id(), like.hanging().timer(), Optional.of(here.id()));
        changing.make(
                new RigEntry(
                        site.id(), original.id(), hourAgo(), "", lead.personId(), UUID.randomUUID(), Optional.empty()),
                fed);
        long elsewhere = enclosures.addRoom(site.id(), "Another room", 99);
        copy(LampsOfCopies.NEW, "C1");
        copying.make(entry(), plan(LampsOfCopies.NEW, 0, elsewhere, List.of("C2")));
        assertThat(rig(copy("C1")).fittings().get(0).hanging().circuitId()).contains(here.id());
        assertThat(rig(copy("C2")).fittings().get(0).hanging().circuitId()).isEmpty();
    }

    @Test
    void ofTheSameFormTwiceAtOnceOneIsStored() {
        CopyEntry entry = entry();
        CopyPlan plan = plan(LampsOfCopies.NEW, 0, original.roomId(), List.of("C1", "C2"));
        List<Throwable> thrown = Together.run(() -> copying.make(entry, plan), () -> copying.make(entry, plan));
        assertThat(thrown).isEmpty();
        assertThat(copying.made(site.id(), original.id(), entry.key())).hasSize(2);
    }

    @Test
    void ofOneCodeThatIsTakenNothingIsStored() {
        int before = lamps.all(site.id()).size();
        assertThatThrownBy(() -> copy(LampsOfCopies.NEW, "C1", original.code().toLowerCase(Locale.ROOT)))
                .isInstanceOf(CodeTakenException.class);
        assertThat(enclosures.all(site.id())).noneMatch(one -> one.code().equals("C1"));
        assertThat(lamps.all(site.id())).hasSize(before);
    }

    @Test
    void whatHasChangedSinceTheFormIsNotCopied() {
        CopyEntry entry = entry();
        enclosures.serve(site.id(), home.shade().id(), Served.species(Set.of(species.id())));
        assertThatThrownBy(() -> copying.make(entry, plan(LampsOfCopies.NEW, 0, original.roomId(), List.of("C1"))))
                .isInstanceOf(StaleOriginalException.class);
    }

    @Test
    void anEnclosureWithoutARigIsCopiedWithoutOne() {
        EnclosureFacts bare =
                enclosures.get(site.id(), homes.unlit(site, lead, species).enclosureId());
        CopyEntry entry = new CopyEntry(site.id(), bare.id(), lead.personId(), UUID.randomUUID(), mark(bare));
        copying.make(entry, plan(LampsOfCopies.NEW, 0, bare.roomId(), List.of("C1")));
        assertThat(rigs.changeCount(site.id(), copy("C1").id())).isZero();
    }

    private void copy(LampsOfCopies which, String... codes) {
        copying.make(entry(), plan(which, 0, original.roomId(), List.of(codes)));
    }

    private CopyEntry entry() {
        return new CopyEntry(site.id(), original.id(), lead.personId(), UUID.randomUUID(), mark(original));
    }

    private String mark(EnclosureFacts enclosure) {
        return copying.original(site.id(), enclosure.id()).mark();
    }

    private CopyPlan plan(LampsOfCopies which, double hours, long room, List<String> codes) {
        return new CopyPlan(codes, room, hourAgo(), which, hours, "As in the first");
    }

    private Instant hourAgo() {
        return clock.instant().minus(Duration.ofHours(1));
    }

    private EnclosureFacts copy(String code) {
        return enclosures.all(site.id()).stream()
                .filter(enclosure -> enclosure.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private Rig rig(EnclosureFacts enclosure) {
        return rigs.in(site.id(), enclosure, clock.instant());
    }

    private List<PointFacts> points(EnclosureFacts enclosure) {
        return enclosures.pointsOf(site.id(), enclosure.id());
    }

    /** In the public format, with the tags of the lamps named alike. */
    private String scene(EnclosureFacts enclosure) {
        Rig rig = rig(enclosure);
        String scene = SceneDocument.of(RigScene.of(rig), points(enclosure), Optional.empty());
        for (FittingFacts fitting : rig.fittings()) {
            LampFacts lamp = fitting.lamp();
            scene = scene.replace("\"" + lamp.tag() + "\"", "\"tag\"");
        }
        return scene;
    }
}
