package dapple.housing;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalKind;
import dapple.animal.AnimalState;
import dapple.animal.Counting;
import dapple.animal.Happened;
import dapple.animal.Happening;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.animal.Sex;
import dapple.animal.Split;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.testing.Asking;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@PagesTest
class EventsPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Counting counting;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn keeper;
    private long group;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.KEEPER);
        long species = collection.species(site, "Lygodactylus williamsi").id();
        AnimalState state = new AnimalState(
                "2026-G", "The colony", species, Sex.UNKNOWN, Optional.empty(), Pigment.NORMAL, Reach.EVERYWHERE, "");
        group = keeping.addGroup(site.id(), state, 5, happened(9, "first count"));
    }

    @Test
    void theFirstCountIsTold() throws Exception {
        see().andExpect(content().string(allOf(containsString("first count"), containsString("+5"))));
    }

    @Test
    void aBirthIsToldWithTheCountAfterIt() throws Exception {
        counting.record(site.id(), group, Happening.BIRTH, 3, happened(5, "hatched"));
        see().andExpect(content()
                .string(allOf(containsString("hatched"), containsString("+3"), containsString(">8</td>"))));
    }

    @Test
    void aDeathIsToldWithItsSign() throws Exception {
        counting.record(site.id(), group, Happening.DEATH, 2, happened(5, "found dead"));
        see().andExpect(content().string(allOf(containsString("−2"), containsString(">3</td>"))));
    }

    @Test
    void aRecountSetsTheCount() throws Exception {
        counting.record(site.id(), group, Happening.RECOUNT, 4, happened(5, "counted at night"));
        see().andExpect(content().string(allOf(containsString("counted: 4"), containsString(">4</td>"))));
    }

    @Test
    void aSplitLinksToTheOtherRecord() throws Exception {
        long one = counting.split(
                site.id(), new Split(group, AnimalKind.INDIVIDUAL, "2026-1", "Fern", 1), happened(5, "weak"));
        see().andExpect(content().string(allOf(containsString("/animals/" + one + "/events"), containsString("Fern"))));
    }

    @Test
    void whoRecordedItIsTold() throws Exception {
        see().andExpect(content().string(containsString(keeper.fullName())));
    }

    @Test
    void anAnimalToWhichNothingHappenedSaysSo() throws Exception {
        group = collection
                .home(site, keeper, collection.species(site, "Pogona vitticeps"))
                .animal()
                .id();
        see().andExpect(content().string(containsString("Nothing is recorded that happened.")));
    }

    @Test
    void whoOnlyLooksIsOfferedNoEntry() throws Exception {
        keeper = collection.person(site, Role.INSPECTOR);
        see().andExpect(content().string(not(containsString("/events/new"))));
    }

    @Test
    void thePageOfTheAnimalLinksToIt() throws Exception {
        pages.perform(get("/animals/" + group).with(collection.as(keeper)))
                .andExpect(content().string(containsString("/animals/" + group + "/events\"")));
    }

    @Test
    void thePageOfAGroupSaysHowManyItHolds() throws Exception {
        counting.record(site.id(), group, Happening.BIRTH, 3, happened(5, "hatched"));
        pages.perform(get("/animals/" + group).with(collection.as(keeper)))
                .andExpect(content().string(containsString("8 animals now")));
    }

    @Test
    void aDeathBeforeTheRecordBeganIsRefusedAtItsTime() throws Exception {
        long one = counting.split(
                site.id(), new Split(group, AnimalKind.INDIVIDUAL, "2026-1", "Fern", 1), happened(2, "weak"));
        LocalDateTime before = LocalDateTime.ofInstant(clock.instant().minus(Duration.ofDays(4)), site.timeZone())
                .truncatedTo(ChronoUnit.MINUTES);
        Map<String, String> death = Map.of(
                "key", UUID.randomUUID().toString(), "kind", "DEATH", "at", before.toString(), "reason", "found dead");
        new Asking(pages, collection.as(keeper))
                .send("/animals/" + one + "/events/new", death)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"at-wrong\"")));
    }

    @Test
    void anotherSitesAnimalIsNotFound() throws Exception {
        keeper = collection.person(collection.site(), Role.KEEPER);
        see().andExpect(status().isNotFound());
    }

    private Happened happened(int daysAgo, String reason) {
        return new Happened(
                clock.instant().minus(Duration.ofDays(daysAgo)), reason, UUID.randomUUID(), keeper.personId());
    }

    private ResultActions see() throws Exception {
        return pages.perform(get("/animals/" + group + "/events").with(collection.as(keeper)));
    }
}
