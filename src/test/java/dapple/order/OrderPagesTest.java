package dapple.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@PagesTest
class OrderPagesTest {
    @Autowired
    private TestCollection collection;

    @Autowired
    private Animals animals;

    @Autowired
    private VetOrders orders;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn vet;
    private Home home;
    private AnimalFacts animal;
    private String path;
    private Map<String, String> off;

    @BeforeEach
    void furnish() {
        site = collection.site();
        vet = collection.person(site, Role.VET);
        home = collection.home(
                site, vet, collection.species(site, vet, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM)));
        animal = home.animal();
        path = "/animals/" + animal.id() + "/orders";
        off = Map.of(
                "key",
                UUID.randomUUID().toString(),
                "kind",
                "UV_OFF",
                "reason",
                "eyes shut",
                "lastDay",
                LocalDate.now(clock.withZone(site.timeZone())).plusDays(7).toString());
    }

    @Test
    void anOrderStandsOnThePageOfTheAnimal() throws Exception {
        send(path + "/new", off).andExpect(redirectedUrl(path));
        see("/animals/" + animal.id())
                .andExpect(content().string(containsString("UV index at most 0.1 at every reachable point.")))
                .andExpect(content().string(containsString("eyes shut")))
                .andExpect(content().string(containsString("data-caution=\"ORDER\"")));
    }

    @Test
    void anOrderIsMarkedInTheList() throws Exception {
        send(path + "/new", off);
        see("/animals").andExpect(content().string(containsString("vet’s order: ultraviolet off")));
    }

    @Test
    void anOrderPostedTwiceIsPlacedOnce() throws Exception {
        send(path + "/new", off);
        send(path + "/new", off).andExpect(redirectedUrl(path));
        assertThat(orders.ofAnimal(site.id(), animal.id())).hasSize(1);
    }

    @Test
    void ownLimitsComeBackAsOrdered() throws Exception {
        send(path + "/new", own("1,5", "2.5", "0.2", "3")).andExpect(redirectedUrl(path));
        see(path)
                .andExpect(content()
                        .string(containsString(
                                "Basking 1.5 to 2.5, shade at most 0.2, below 3.0 everywhere, UV index.")));
    }

    @ParameterizedTest
    @CsvSource({
        "'', 2.5, 0.2, 3, baskingLow",
        "x, 2.5, 0.2, 3, baskingLow",
        "-1, 2.5, 0.2, 3, baskingLow",
        "1.5, NaN, 0.2, 3, baskingHigh",
        "1.5, 1e400, 0.2, 3, baskingHigh",
        "1.5, 1.4, 0.2, 3, baskingHigh",
        "1.5, 2.5, 2.6, 3, shadeHigh",
        "1.5, 2.5, 0.2, 2.4, ceiling",
        "1.5, 2.5, 0.2, 21, ceiling"
    })
    void wrongLimitsComeBackWithAMessage(String low, String high, String shade, String ceiling, String field)
            throws Exception {
        send(path + "/new", own(low, high, shade, ceiling))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + field + "-wrong\"")))
                .andExpect(content().string(containsString("value=\"eyes shut\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "kind, '', kind",
        "kind, MORE, kind",
        "reason, '', reason",
        "lastDay, '', lastDay",
        "lastDay, tomorrow, lastDay",
        "lastDay, 2020-01-01, lastDay",
        "lastDay, 2199-01-01, lastDay",
        "from, 2020-01-01T10:00, from",
        "from, later, from",
        "from, 2027-03-28T01:30, from",
        "from, 2026-10-25T01:30, from",
        "ceiling, 2, ceiling"
    })
    void aWrongFieldComesBackWithAMessage(String field, String typed, String wrong) throws Exception {
        send(path + "/new", with(Map.of(field, typed)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + wrong + "-wrong\"")));
    }

    @Test
    void aCapIsBelowTheCeilingOfTheSpecies() throws Exception {
        send(path + "/new", with(Map.of("kind", "CAP", "ceiling", "8")))
                .andExpect(content().string(containsString("This is not below the ceiling of the species.")));
    }

    @Test
    void whoOrdersIsWarnedOfWhatElseGoesOut() throws Exception {
        see(path + "/new").andExpect(content().string(containsString("data-caution=\"ORDER\"")));
    }

    @Test
    void cageMatesAreShownWithWhatTheyNeed() throws Exception {
        AnimalFacts mate = mate();
        see(path + "/new")
                .andExpect(content().string(containsString(mate.name())))
                .andExpect(content().string(containsString("2.9 to 7.4 UVI at the basking place")));
    }

    @Test
    void aConflictWithACageMateIsAcceptedFirst() throws Exception {
        AnimalFacts mate = mate();
        send(path + "/new", off).andExpect(content().string(containsString("It does not go with who shares")));
        assertThat(orders.ofAnimal(site.id(), animal.id())).isEmpty();
        send(path + "/new", with(Map.of("despite", animal.id() + "-" + mate.id())))
                .andExpect(redirectedUrl(path));
    }

    @Test
    void aConflictThatWasNotShownIsNotAccepted() throws Exception {
        AnimalFacts mate = mate();
        mate();
        send(path + "/new", with(Map.of("despite", animal.id() + "-" + mate.id())))
                .andExpect(content().string(containsString("It does not go with who shares")));
    }

    @Test
    void aConflictStandsOnThePageOfTheAnimal() throws Exception {
        send(path + "/new", off);
        AnimalFacts mate = mate();
        see("/animals/" + animal.id())
                .andExpect(content().string(containsString("It does not go with who shares")))
                .andExpect(content().string(containsString(mate.name())));
    }

    @Test
    void anOrderEndsEarlyWithAReason() throws Exception {
        send(path + "/new", off);
        send(ending(), Map.of("reason", "healed")).andExpect(redirectedUrl(path));
        see(path).andExpect(content().string(containsString("Ended early by " + vet.fullName() + ": healed")));
    }

    @Test
    void anOrderThatWasEndedBeforeItBeganIsOver() throws Exception {
        LocalDateTime tomorrow =
                LocalDateTime.ofInstant(clock.instant(), vet.zone()).plusDays(1).truncatedTo(ChronoUnit.MINUTES);
        send(path + "/new", with(Map.of("from", tomorrow.toString()))).andExpect(redirectedUrl(path));
        send(ending(), Map.of("reason", "healed")).andExpect(redirectedUrl(path));
        see(path)
                .andExpect(
                        content().string(allOf(containsString("It never began."), not(containsString("End it now")))));
        assertThat(orders.openOf(vet.siteId(), animal.id(), clock.instant())).isEmpty();
    }

    @Test
    void anOrderDoesNotEndWithoutAReason() throws Exception {
        send(path + "/new", off);
        send(ending(), Map.of("reason", " "))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"reason-wrong\"")));
    }

    @Test
    void whoIsNoVetOrdersNothing() throws Exception {
        SignedIn supervisor = collection.person(site, Role.SUPERVISOR, Role.KEEPER);
        pages.perform(get(path + "/new").with(collection.as(supervisor))).andExpect(status().isForbidden());
        pages.perform(get(path).with(collection.as(supervisor)))
                .andExpect(content().string(not(containsString("/orders/new"))));
    }

    private String ending() {
        return path + "/" + orders.ofAnimal(site.id(), animal.id()).get(0).id() + "/ending";
    }

    private AnimalFacts mate() {
        AnimalFacts mate = collection
                .home(
                        site,
                        vet,
                        collection.species(
                                site, vet, "Species " + UUID.randomUUID(), new UvZone(3, LightMethod.SUNBEAM)))
                .animal();
        animals.move(site.id(), new Arrival(mate.id(), home.enclosureId(), clock.instant(), vet.personId()));
        return mate;
    }

    private Map<String, String> own(String low, String high, String shade, String ceiling) {
        return with(Map.of(
                "kind", "OWN_LIMITS", "baskingLow", low, "baskingHigh", high, "shadeHigh", shade, "ceiling", ceiling));
    }

    private Map<String, String> with(Map<String, String> others) {
        Map<String, String> changed = new HashMap<>(off);
        changed.putAll(others);
        return changed;
    }

    private ResultActions see(String page) throws Exception {
        return pages.perform(get(page).with(csrf()).with(collection.as(vet)));
    }

    private ResultActions send(String page, Map<String, String> fields) throws Exception {
        MockHttpServletRequestBuilder request = post(page).with(csrf()).with(collection.as(vet));
        fields.forEach(request::param);
        return pages.perform(request);
    }
}
