package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.Drafts;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.judging.PointRole;
import dapple.meter.MeterFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.rig.LampStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.rig.Rigs;
import dapple.round.Cadence;
import dapple.round.DueDays;
import dapple.round.GivenTo;
import dapple.round.PlanDetails;
import dapple.round.RoundArranging;
import dapple.round.WalkKeeping;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.StatementCount;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/**
 * How often a page asks the database for what it shows: seldom, and as often for many enclosures as for few. Reading and
 * renewing the session is not counted.
 */
@PagesTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StatementCountPagesTest {
    /** Each costs about a millisecond to a database on another machine (our own limit). */
    private static final long MOST = 12;

    private static final long MOST_ON_THE_DESK = 16;

    /** A phone asks once for all that it carries on a walk, as often for many doors as for few. */
    private static final long MOST_FOR_A_WALK = 25;

    @Autowired
    private MockMvc pages;

    @Autowired
    private StatementCount count;

    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Drafts drafts;

    @Autowired
    private Rigs rigs;

    @Autowired
    private RigChanging changing;

    @Autowired
    private RoundArranging arranging;

    @Autowired
    private WalkKeeping rounds;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn person;
    private MeterFacts meter;
    private Home home;
    private long draftId;
    private long planId;

    private final Map<Asked, Long> ofFew = new EnumMap<>(Asked.class);
    private final Map<Asked, Long> ofMany = new EnumMap<>(Asked.class);

    /** Every page is asked for while there are few rows, and again when there are many. */
    @BeforeAll
    void ask() throws Exception {
        site = collection.site();
        person = collection.person(site, Role.KEEPER, Role.SUPERVISOR, Role.VET);
        meter = collection.meter(site);
        home = furnished("Pogona vitticeps", 3);
        DraftRig drafted = DraftRig.of(rigs.at(site.id(), home.enclosureId(), clock.instant()));
        draftId = drafts.make(new DraftPlace(site.id(), home.enclosureId()), "Plan A", drafted, person.personId());
        planId = round("Round", home);
        statements(Asked.TODAY); // The first page after a start asks also whether the installation has been begun.
        for (Asked page : Asked.values()) {
            ofFew.put(page, statements(page));
        }
        for (int zone = 2; zone <= 4; zone++) {
            furnished("Varanus acanthurus " + zone, zone);
            read(home);
            rounds.begin(person, round("Round " + zone, home), today());
            collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        }
        for (Asked page : Asked.values()) {
            ofMany.put(page, statements(page));
        }
    }

    @ParameterizedTest
    @EnumSource
    void asksSeldom(Asked page) {
        assertThat(ofFew.get(page)).isBetween(1L, page.most());
    }

    @ParameterizedTest
    @EnumSource
    void asksAsOftenForManyRowsAsForFew(Asked page) {
        assertThat(ofMany.get(page)).isEqualTo(ofFew.get(page));
    }

    @Test
    void theLightAsksNoMoreAfterATimerWasChanged() throws Exception {
        long before = statements(Asked.LIGHT);
        changeTimer();
        assertThat(statements(Asked.LIGHT)).isLessThanOrEqualTo(before);
    }

    private void changeTimer() {
        long fitting = rigs.at(site.id(), home.enclosureId(), clock.instant())
                .fittings()
                .get(0)
                .id();
        RigEntry entry = new RigEntry(
                site.id(),
                home.enclosureId(),
                clock.instant(),
                "",
                person.personId(),
                UUID.randomUUID(),
                Optional.empty());
        changing.make(entry, new LampStep.SetTimer(fitting, Optional.empty(), Optional.empty()));
    }

    /** An enclosure with its animal, its species' target and a reading at each point. */
    private Home furnished(String scientificName, int zone) {
        SpeciesFacts species = collection.species(site, person, scientificName, new UvZone(zone, LightMethod.SUNBEAM));
        Home furnished = homes.unlit(site, person, species);
        read(furnished);
        hang(furnished);
        return furnished;
    }

    /** Due today, with several walks before. */
    private long round(String title, Home where) {
        DueDays days = new DueDays(new Cadence.Every(7), today().minusWeeks(3), Optional.empty());
        List<Long> doors = List.of(where.enclosureId());
        return arranging.add(site.id(), new PlanDetails(title, days, new GivenTo.Person(person.personId()), doors));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), site.timeZone());
    }

    private void hang(Home where) {
        LampFacts lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        homes.light(site, person, where, lamp, RiggedHomes.over());
    }

    private void read(Home visited) {
        UUID visit = UUID.randomUUID();
        visited.points().forEach(point -> read(visit, visited.enclosureId(), point));
    }

    private void read(UUID visit, long enclosureId, PointFacts point) {
        VisitPlace place = new VisitPlace(visit, enclosureId, point.id());
        double uvi = point.role() == PointRole.SHADE ? 0.1 : 1.7;
        logging.log(
                new Visitor(site.id(), person.personId()),
                new Entry(UUID.randomUUID(), place, meter.id(), uvi, clock.instant()));
    }

    private long statements(Asked page) throws Exception {
        count.begin();
        pages.perform(page.asked(home, draftId, planId).with(csrf()).with(collection.as(person)))
                .andExpect(status().isOk());
        return count.asked().size();
    }

    /** The pages that people open most. */
    private enum Asked {
        TODAY,
        ROUNDS,
        ROUND,
        WALK,
        WALK_ON_PHONE,
        DOOR_ON_PHONE,
        REVIEW,
        ENCLOSURE,
        LIGHT,
        RIG,
        LAMPS_INSIDE,
        TIMERS,
        RESIDENTS,
        COURSE,
        ENCLOSURE_EDIT,
        ENCLOSURE_HISTORY,
        METERS,
        ROOMS,
        ANIMAL,
        TARGETS,
        LAMPS,
        LAMP_MODELS,
        COMMISSIONING,
        DRAFTS,
        DESK,
        SOLVING,
        PROPOSALS;

        /** The desk reads all lamps and models of the site beside the enclosure; while something is dragged, hardly anything. */
        private long most() {
            if (Set.of(WALK_ON_PHONE, DOOR_ON_PHONE).contains(this)) {
                return MOST_FOR_A_WALK;
            }
            return Set.of(DRAFTS, DESK, SOLVING).contains(this) ? MOST_ON_THE_DESK : MOST;
        }

        /** As a browser asks: for a part of the page of an enclosure when it is there already. */
        MockHttpServletRequestBuilder asked(Home home, long draftId, long planId) {
            boolean isPart = Set.of(LIGHT, LAMPS_INSIDE, RESIDENTS, COURSE).contains(this);
            String path = planned(planId).orElseGet(() -> path(home, draftId));
            return isPart ? get(path).header("HX-Request", "true") : get(path);
        }

        private Optional<String> planned(long planId) {
            String round = "/rounds/" + planId;
            return switch (this) {
                case ROUND -> Optional.of(round);
                case WALK -> Optional.of(round + "/walks/" + LocalDate.now(ZoneId.of("Europe/London")));
                case WALK_ON_PHONE ->
                    Optional.of(round + "/walks/" + LocalDate.now(ZoneId.of("Europe/London")) + "/on-phone");
                default -> Optional.empty();
            };
        }

        private String path(Home home, long draftId) {
            return switch (this) {
                case TODAY, ROUND, WALK, WALK_ON_PHONE -> "/";
                case ROUNDS -> "/rounds";
                case REVIEW -> "/review";
                case ENCLOSURE -> "/enclosures/" + home.enclosureId();
                case DOOR_ON_PHONE -> "/enclosures/" + home.enclosureId() + "/on-phone";
                case LIGHT -> "/enclosures/" + home.enclosureId() + "/light";
                case RIG -> "/enclosures/" + home.enclosureId() + "/rig";
                case LAMPS_INSIDE -> "/enclosures/" + home.enclosureId() + "/lamps";
                case TIMERS -> "/enclosures/" + home.enclosureId() + "/timers";
                case RESIDENTS -> "/enclosures/" + home.enclosureId() + "/residents";
                case COURSE -> "/enclosures/" + home.enclosureId() + "/course";
                case ENCLOSURE_EDIT -> "/enclosures/" + home.enclosureId() + "/edit";
                case ENCLOSURE_HISTORY -> "/enclosures/" + home.enclosureId() + "/history";
                case METERS -> "/meters";
                case ROOMS -> "/rooms";
                case LAMPS -> "/lamps";
                case LAMP_MODELS -> "/lamp-models";
                case ANIMAL -> "/animals/" + home.animal().id();
                case TARGETS -> "/targets";
                case COMMISSIONING -> "/enclosures/" + home.enclosureId() + "/commissioning";
                case DRAFTS -> "/enclosures/" + home.enclosureId() + "/desk";
                case DESK -> "/enclosures/" + home.enclosureId() + "/desk/" + draftId;
                case SOLVING -> "/enclosures/" + home.enclosureId() + "/desk/" + draftId + "/solving";
                case PROPOSALS -> "/enclosures/" + home.enclosureId() + "/desk/" + draftId + "/proposals";
            };
        }
    }
}
