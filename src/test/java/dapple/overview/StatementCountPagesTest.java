package dapple.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

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
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.RiggedHomes;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import jakarta.persistence.EntityManagerFactory;
import java.time.Clock;
import java.util.Set;
import java.util.UUID;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/**
 * How often a page asks the database for what it shows: seldom, and as often for many enclosures as for few. Reading and
 * renewing the session is not counted.
 */
@PagesTest
@TestPropertySource(properties = "spring.jpa.properties.hibernate.generate_statistics=true")
class StatementCountPagesTest {
    /** Each costs about a millisecond to a database on another machine (our own limit). */
    private static final long MOST = 12;

    @Autowired
    private MockMvc pages;

    @Autowired
    private EntityManagerFactory entities;

    @Autowired
    private TestCollection collection;

    @Autowired
    private RiggedHomes homes;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private SignedIn person;
    private MeterFacts meter;
    private Home home;

    @BeforeEach
    void furnish() throws Exception {
        site = collection.site();
        person = collection.person(site, Role.KEEPER, Role.SUPERVISOR, Role.VET);
        meter = collection.meter(site);
        home = furnished("Pogona vitticeps", 3);
        statements(Asked.TODAY); // The first page after a start asks also whether the installation has been begun.
    }

    @ParameterizedTest
    @EnumSource
    void asksAtMostTwelveTimes(Asked page) throws Exception {
        assertThat(statements(page)).isBetween(1L, MOST);
    }

    @ParameterizedTest
    @EnumSource
    void asksAsOftenForManyRowsAsForFew(Asked page) throws Exception {
        long few = statements(page);
        for (int zone = 2; zone <= 4; zone++) {
            furnished("Varanus acanthurus " + zone, zone);
            read(home);
            collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        }
        assertThat(statements(page)).isEqualTo(few);
    }

    /** An enclosure with its animal, its species' target and a reading at each point. */
    private Home furnished(String scientificName, int zone) {
        SpeciesFacts species = collection.species(site, person, scientificName, new UvZone(zone, LightMethod.SUNBEAM));
        Home furnished = homes.unlit(site, person, species);
        read(furnished);
        hang(furnished);
        return furnished;
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
        Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
        long before = statistics.getPrepareStatementCount();
        pages.perform(page.asked(home).with(csrf()).with(collection.as(person))).andExpect(status().isOk());
        return statistics.getPrepareStatementCount() - before;
    }

    /** The pages that people open most. */
    private enum Asked {
        TODAY,
        REVIEW,
        ENCLOSURE,
        LIGHT,
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
        COMMISSIONING;

        /** As a browser asks: for a part of the page of an enclosure when it is there already. */
        MockHttpServletRequestBuilder asked(Home home) {
            boolean isPart = Set.of(LIGHT, LAMPS_INSIDE, RESIDENTS, COURSE).contains(this);
            return isPart ? get(path(home)).header("HX-Request", "true") : get(path(home));
        }

        private String path(Home home) {
            return switch (this) {
                case TODAY -> "/";
                case REVIEW -> "/review";
                case ENCLOSURE -> "/enclosures/" + home.enclosureId();
                case LIGHT -> "/enclosures/" + home.enclosureId() + "/light";
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
            };
        }
    }
}
