package dapple.testing;

import dapple.draft.DraftFacts;
import dapple.draft.DraftLamp;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.DraftSeen;
import dapple.draft.Drafts;
import dapple.draft.LampPick;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.Hanging;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import dapple.rig.Rigs;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.Optional;
import org.springframework.boot.test.context.TestComponent;

/** Enclosures that are lit, with drafts; everything invented. */
@TestComponent
public class DraftedHomes {
    private final TestCollection collection;
    private final RiggedHomes homes;
    private final Drafts drafts;
    private final Rigs rigs;
    private final Clock clock;

    DraftedHomes(TestCollection collection, RiggedHomes homes, Drafts drafts, Rigs rigs, Clock clock) {
        this.collection = collection;
        this.homes = homes;
        this.drafts = drafts;
        this.rigs = rigs;
        this.clock = clock;
    }

    /** Under a tube and a mesh, with a slab to lie on; the skink that lives there needs zone 2. */
    public Drafted lit() {
        SiteFacts site = collection.site();
        SignedIn lead = collection.person(site, Role.LIGHTING_LEAD, Role.SUPERVISOR);
        SpeciesFacts skink = collection.species(site, lead, "Tiliqua scincoides", new UvZone(2, LightMethod.SUNBEAM));
        return new Drafted(site, lead, skink, homes.lit(site, lead, skink));
    }

    /** One of these, and what can be asked of its drafts. */
    public final class Drafted {
        private final SiteFacts site;
        private final SignedIn lead;
        private final SpeciesFacts skink;
        private final Home home;

        private Drafted(SiteFacts site, SignedIn lead, SpeciesFacts skink, Home home) {
            this.site = site;
            this.lead = lead;
            this.skink = skink;
            this.home = home;
        }

        public SiteFacts site() {
            return site;
        }

        public SignedIn lead() {
            return lead;
        }

        public SpeciesFacts skink() {
            return skink;
        }

        public Home home() {
            return home;
        }

        public DraftPlace place() {
            return new DraftPlace(site.id(), home.enclosureId());
        }

        /** What hangs there. */
        public Rig rig() {
            return rigs.at(site.id(), home.enclosureId(), clock.instant());
        }

        public DraftRig installed() {
            return DraftRig.of(rig());
        }

        public long draft(String name, DraftRig rig) {
            return drafts.make(place(), name, rig, lead.personId());
        }

        public DraftFacts draft(long id) {
            return drafts.get(place(), id);
        }

        public DraftSeen seen(long id) {
            return new DraftSeen(id, draft(id).version());
        }

        public String desk() {
            return "/enclosures/" + home.enclosureId() + "/desk";
        }
    }

    /** In the middle, at a height, for ten hours. */
    public static Hanging hanging(double zMetres) {
        return new Hanging(
                "a place",
                Optional.of(RigExamples.above(0.6, 0.3, zMetres)),
                Optional.of(RigExamples.tenHours()),
                Optional.empty());
    }

    /** A lamp that comes. */
    public static DraftLamp lamp(LampPick pick, double zMetres) {
        return new DraftLamp(Optional.empty(), pick, hanging(zMetres));
    }
}
