package dapple.reading;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;

import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.rig.DailyTimer;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Readings under a lamp that burns day and night. */
@PagesTest
class WarmUpPagesTest {
    private static final String COLD = "had not warmed up yet";
    private static final DailyTimer ALWAYS = new DailyTimer(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);

    @Autowired
    private TestCollection collection;

    @Autowired
    private RigChanging changing;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Clock clock;

    private final UUID visit = UUID.randomUUID();
    private SiteFacts site;
    private SignedIn keeper;
    private Home home;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        home = collection.home(
                site, keeper, collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
    }

    @Test
    void theReplySaysThatTheLampWasNotWarmYet() throws Exception {
        hang(Duration.ofMinutes(10));
        see("/readings/" + read()).andExpect(content().string(containsString(COLD)));
    }

    @Test
    void theVisitSaysSoOfThatPoint() throws Exception {
        hang(Duration.ofMinutes(10));
        read();
        see("/enclosures/" + home.enclosureId() + "/visits/" + visit)
                .andExpect(content().string(containsString("not warm until")));
    }

    @Test
    void underAWarmLampNothingIsSaid() throws Exception {
        hang(Duration.ofMinutes(31));
        see("/readings/" + read()).andExpect(content().string(not(containsString(COLD))));
    }

    private ResultActions see(String path) throws Exception {
        return new Asking(pages, collection.as(keeper)).see(path);
    }

    private void hang(Duration ago) {
        LampFacts lamp = collection.lamp(site, collection.lampModel(site, LampClass.TUBE_T5));
        RigEntry entry = new RigEntry(
                site.id(),
                home.enclosureId(),
                clock.instant().minus(ago),
                "",
                keeper.personId(),
                UUID.randomUUID(),
                Optional.empty());
        changing.make(
                entry,
                new LampStep.Fit(
                        lamp.id(), new Hanging("tube", Optional.empty(), Optional.of(ALWAYS), Optional.empty())));
    }

    private long read() {
        VisitPlace place =
                new VisitPlace(visit, home.enclosureId(), home.basking().id());
        return logging.log(
                new Visitor(site.id(), keeper.personId()),
                new Entry(UUID.randomUUID(), place, collection.meter(site).id(), 4.0, clock.instant()));
    }
}
