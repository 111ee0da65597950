package dapple.housing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKeeping;
import dapple.animal.AnimalState;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.Happened;
import dapple.animal.NewAnimal;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.animal.Sex;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
class HousingPagesTest {
    private static final String MOVES = "/animals/moves/new";

    @Autowired
    private TestCollection collection;

    @Autowired
    private Animals animals;

    @Autowired
    private AnimalKeeping keeping;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Clock clock;

    @Autowired
    private MockMvc pages;

    private SiteFacts site;
    private SignedIn keeper;
    private SpeciesFacts species;
    private Home home;
    private AnimalFacts animal;
    private long empty;
    private long group;

    @BeforeEach
    void furnish() {
        site = collection.site();
        keeper = collection.person(site, Role.SUPERVISOR, Role.VET);
        species = collection.species(site, keeper, "Pogona vitticeps", new UvZone(3, LightMethod.SUNBEAM));
        home = collection.home(site, keeper, species);
        animal = home.animal();
        empty = collection.emptyEnclosure(site);
        Instant begun = clock.instant().minus(Duration.ofDays(30));
        group = keeping.addGroup(
                site.id(),
                new AnimalState(
                        "G-1",
                        "Hatchlings",
                        species.id(),
                        Sex.UNKNOWN,
                        Optional.empty(),
                        Pigment.NORMAL,
                        Reach.EVERYWHERE,
                        ""),
                12,
                new Happened(begun, "", UUID.randomUUID(), keeper.personId()));
        animals.move(site.id(), new Arrival(group, home.enclosureId(), begun, keeper.personId()));
    }

    @Test
    void theListFindsByNumber() throws Exception {
        see("/animals?text=g-1")
                .andExpect(content().string(containsString("Hatchlings")))
                .andExpect(content().string(not(containsString(animal.accessionNumber()))));
    }

    @Test
    void whatStandsForNameAndNumberIsSaidOnce() throws Exception {
        long unnumbered = animals.add(site.id(), new NewAnimal("Juniper", "Juniper", species.id()))
                .id();
        for (String page :
                List.of("/animals?text=Juniper", "/animals/" + unnumbered, "/animals/" + unnumbered + "/orders")) {
            String body = see(page).andReturn().getResponse().getContentAsString();
            assertThat(body)
                    .as(page)
                    .containsPattern("\\bJuniper\\b")
                    .doesNotContain(">Juniper</td>", ">Juniper</span>");
        }
    }

    @Test
    void theListTakesSignsAsTheyAre() throws Exception {
        see("/animals?text=%25").andExpect(content().string(containsString("No animal here is like this.")));
    }

    @Test
    void theListFindsByEnclosure() throws Exception {
        see("/animals?enclosure=" + empty).andExpect(content().string(containsString("No animal here is like this.")));
        see("/animals?enclosure=" + home.enclosureId()).andExpect(content().string(containsString("Hatchlings")));
    }

    @Test
    void theListFindsBySpecies() throws Exception {
        long other = collection.species(site, "Agama agama").id();
        see("/animals?species=" + other).andExpect(content().string(containsString("No animal here is like this.")));
    }

    @ParameterizedTest
    @CsvSource({"species=x", "enclosure=1e400", "shown=SOME", "page=-1", "page=99999999999999999999", "text=%00"})
    void theListTakesWhatItCannotReadAsNotSaid(String query) throws Exception {
        see("/animals?" + query).andExpect(status().isOk());
    }

    @Test
    void whoIsGoneIsListedApart() throws Exception {
        send(events(animal.id()), event("DEATH", Map.of()));
        see("/animals").andExpect(content().string(not(containsString(animal.accessionNumber()))));
        see("/animals?shown=GONE").andExpect(content().string(containsString("gone: death")));
    }

    @Test
    void aMoveShowsWhoIsThereWithTheirTarget() throws Exception {
        see(MOVES + "?from=" + home.enclosureId())
                .andExpect(content().string(containsString("group of 12")))
                .andExpect(content().string(containsString("UV zone 3, sunbeam method")))
                .andExpect(content().string(containsString("2.9 to 7.4 UVI at the basking place")));
    }

    @Test
    void aMoveFromAnAnimalHasItChosen() throws Exception {
        see(MOVES + "?animal=" + animal.id())
                .andExpect(content().string(containsString("checked=\"checked\"")))
                .andExpect(content().string(containsString(animal.name())));
    }

    @Test
    void severalMove() throws Exception {
        move(Map.of()).andExpect(redirectedUrl("/animals?shown=HERE&enclosure=" + empty));
        assertThat(animals.inEnclosure(site.id(), empty, clock.instant()))
                .extracting(AnimalFacts::id)
                .containsExactlyInAnyOrder(animal.id(), group);
    }

    @Test
    void aMovePostedTwiceMovesOnce() throws Exception {
        move(Map.of());
        move(Map.of())
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("is no longer where this form found it")));
    }

    @ParameterizedTest
    @CsvSource({
        "to, '', to",
        "to, there, to",
        "at, '', at",
        "at, 2199-01-01T10:00, at",
        "at, 2026-03-29T01:30, at",
        "at, 2025-10-26T01:30, at",
        "at, 2026-01-01T10:00, at",
        "at, now, at",
        "reason, '', reason"
    })
    void aWrongMoveComesBackWithAMessage(String field, String typed, String wrong) throws Exception {
        move(Map.of(field, typed))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + wrong + "-wrong\"")));
    }

    @Test
    void somebodyIsChosen() throws Exception {
        Map<String, String> form = moveForm(Map.of());
        form.remove("animalIds");
        send(MOVES, form).andExpect(content().string(containsString("id=\"animalIds-wrong\"")));
    }

    @Test
    void theLaterOfTwoTimesIsTaken() throws Exception {
        move(Map.of(
                        "from",
                        "0",
                        "animalIds",
                        String.valueOf(fresh(species)),
                        "at",
                        "2025-10-26T01:30",
                        "atWhich",
                        "SECOND"))
                .andExpect(status().is3xxRedirection());
        assertThat(animals.inEnclosure(site.id(), empty, Instant.parse("2025-10-26T01:29:00Z")))
                .isEmpty();
    }

    @Test
    void whoHasNoTargetMovesOnlyKnowingly() throws Exception {
        SpeciesFacts unknown = collection.species(site, "Pogona minor");
        String newcomer = String.valueOf(fresh(unknown));
        Map<String, String> move = Map.of("from", "0", "animalIds", newcomer);
        move(move)
                .andExpect(content().string(containsString("id=\"withoutTarget-wrong\"")))
                .andExpect(content().string(containsString("no target yet")));
        Map<String, String> knowing = new HashMap<>(move);
        knowing.put("withoutTarget", "true");
        move(knowing).andExpect(status().is3xxRedirection());
    }

    @Test
    void newNeighboursWithOtherNeedsAreAcceptedFirst() throws Exception {
        Home shady = collection.home(
                site,
                keeper,
                collection.species(site, keeper, "Correlophus ciliatus", new UvZone(1, LightMethod.SHADE)));
        Map<String, String> move = new HashMap<>(
                Map.of("animalIds", String.valueOf(animal.id()), "to", String.valueOf(shady.enclosureId())));
        move(move)
                .andExpect(content().string(containsString("They do not go with who is there")))
                .andExpect(content().string(containsString("0.35 to 0.7 UVI at the basking place")));
        move.put("despite", animal.id() + "-" + shady.animal().id());
        move(move).andExpect(status().is3xxRedirection());
    }

    @Test
    void anotherSitesEnclosureIsNotFound() throws Exception {
        long foreign = collection.emptyEnclosure(collection.site());
        move(Map.of("to", String.valueOf(foreign))).andExpect(status().isNotFound());
    }

    @Test
    void anotherSitesAnimalIsNotFound() throws Exception {
        SiteFacts other = collection.site();
        long foreign = collection
                .home(other, collection.person(other, Role.KEEPER), collection.species(other, "Agama agama"))
                .animal()
                .id();
        move(Map.of("animalIds", String.valueOf(foreign))).andExpect(status().isNotFound());
        see(MOVES + "?animal=" + foreign).andExpect(status().isNotFound());
    }

    @ParameterizedTest
    @CsvSource({"BIRTH, 5, 17", "DEATH, 5, 7", "RECOUNT, 9, 9", "TRANSFER, 2, 10", "RELEASE, 2, 10"})
    void anEventChangesTheCount(String kind, String number, int count) throws Exception {
        send(events(group), event(kind, Map.of("number", number))).andExpect(redirectedUrl("/animals/" + group));
        assertThat(animals.counts(site.id(), List.of(group), clock.instant())).containsEntry(group, count);
    }

    @Test
    void anEventPostedTwiceCountsOnce() throws Exception {
        Map<String, String> birth = event("BIRTH", Map.of("number", "5"));
        send(events(group), birth);
        send(events(group), birth).andExpect(redirectedUrl("/animals/" + group));
        assertThat(animals.counts(site.id(), List.of(group), clock.instant())).containsEntry(group, 17);
    }

    @ParameterizedTest
    @CsvSource({
        "BIRTH, number, '', number",
        "BIRTH, number, many, number",
        "BIRTH, number, -1, number",
        "BIRTH, number, 1e400, number",
        "DEATH, number, 13, number",
        "DEATH, at, 2199-01-01T10:00, at",
        "DEATH, at, 2026-03-29T01:30, at",
        "DEATH, reason, '', reason",
        "SPLIT_OFF, accessionNumber, '', accessionNumber",
        "SPLIT_OFF, accessionNumber, G-1, accessionNumber",
        "SPLIT_OFF, name, '', name",
        "JOINED, groupId, '', groupId"
    })
    void aWrongEventComesBackWithAMessage(String kind, String field, String typed, String wrong) throws Exception {
        Map<String, String> form =
                event(kind, Map.of("number", "1", "accessionNumber", "S-1", "name", "One", "newKind", "INDIVIDUAL"));
        form.put(field, typed);
        send(events(group), form)
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("id=\"" + wrong + "-wrong\"")));
    }

    @ParameterizedTest
    @CsvSource({"BIRTH", "DEATH", "RECOUNT", "SPLIT_OFF", "JOINED", "TRANSFER", "RELEASE", "NOTHING"})
    void everyKindHasItsPage(String kind) throws Exception {
        see(events(group) + "?kind=" + kind).andExpect(status().isOk());
        see(events(animal.id()) + "?kind=" + kind).andExpect(status().isOk());
    }

    @Test
    void oneAnimalHasNoBirth() throws Exception {
        send(events(animal.id()), event("BIRTH", Map.of("number", "2")))
                .andExpect(content().string(containsString("This cannot happen to such a record.")));
    }

    @Test
    void whoLeavesAGroupHasThePageOfItsOwnWithTheStaysOfTheGroup() throws Exception {
        String page = send(
                        events(group),
                        event("SPLIT_OFF", Map.of("newKind", "INDIVIDUAL", "accessionNumber", "S-1", "name", "Fig")))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        EnclosureFacts place = enclosures.get(site.id(), home.enclosureId());
        see(page == null ? "" : page)
                .andExpect(content().string(containsString("Fig")))
                .andExpect(content().string(containsString(place.code())));
    }

    @Test
    void oneJoinsAGroup() throws Exception {
        send(events(animal.id()), event("JOINED", Map.of("groupId", String.valueOf(group))))
                .andExpect(redirectedUrl("/animals/" + group));
        assertThat(animals.counts(site.id(), List.of(group), clock.instant())).containsEntry(group, 13);
    }

    @Test
    void aSupervisorTakesAnAnimalBack() throws Exception {
        send(events(animal.id()), event("TRANSFER", Map.of()));
        see("/animals/" + animal.id() + "/return").andExpect(status().isOk());
        send("/animals/" + animal.id() + "/return", event("", Map.of("at", now(0))))
                .andExpect(redirectedUrl(MOVES + "?animal=" + animal.id()));
        assertThat(animals.details(site.id(), animal.id()).isHere()).isTrue();
    }

    @Test
    void nobodyIsTakenBackWhoIsHere() throws Exception {
        see("/animals/" + animal.id() + "/return").andExpect(content().string(containsString("The record is open.")));
        send("/animals/" + animal.id() + "/return", event("", Map.of())).andExpect(status().isOk());
    }

    @Test
    void aWithdrawnStayStaysOnItsPage() throws Exception {
        long stay = animals.staysOf(site.id(), animal.id()).get(0).id();
        String correction = "/animals/" + animal.id() + "/stays/" + stay + "/correction";
        see(correction).andExpect(status().isOk());
        send(correction, Map.of("enclosureId", String.valueOf(empty), "reason", "typed the wrong code"))
                .andExpect(redirectedUrl("/animals/" + animal.id() + "/stays"));
        see("/animals/" + animal.id() + "/stays")
                .andExpect(content().string(containsString("Withdrawn by " + keeper.fullName())))
                .andExpect(content().string(containsString("typed the wrong code")));
        send(correction, Map.of("enclosureId", "", "reason", "again"))
                .andExpect(content().string(containsString("is withdrawn already")));
    }

    @ParameterizedTest
    @CsvSource({"here, wrong code, enclosureId", "'', '', reason"})
    void aWrongCorrectionComesBackWithAMessage(String instead, String reason, String wrong) throws Exception {
        long stay = animals.staysOf(site.id(), animal.id()).get(0).id();
        String correction = "/animals/" + animal.id() + "/stays/" + stay + "/correction";
        send(correction, Map.of("enclosureId", instead, "reason", reason))
                .andExpect(content().string(containsString("id=\"" + wrong + "-wrong\"")));
    }

    @Test
    void noStayOfAnotherAnimalIsCorrected() throws Exception {
        long foreign = animals.staysOf(site.id(), group).get(0).id();
        see("/animals/" + animal.id() + "/stays/" + foreign + "/correction").andExpect(status().isNotFound());
    }

    private long fresh(SpeciesFacts kind) {
        return keeping.add(
                site.id(),
                new AnimalState(
                        "F-" + kind.id(),
                        "Newcomer",
                        kind.id(),
                        Sex.UNKNOWN,
                        Optional.empty(),
                        Pigment.NORMAL,
                        Reach.EVERYWHERE,
                        ""),
                keeper.personId());
    }

    private static String events(long animal) {
        return "/animals/" + animal + "/events/new";
    }

    private Map<String, String> event(String kind, Map<String, String> others) {
        Map<String, String> form = new HashMap<>(
                Map.of("key", UUID.randomUUID().toString(), "kind", kind, "at", now(5), "reason", "seen on the round"));
        form.putAll(others);
        return form;
    }

    private ResultActions move(Map<String, String> others) throws Exception {
        return send(MOVES, moveForm(others));
    }

    private Map<String, String> moveForm(Map<String, String> others) {
        Map<String, String> form = new HashMap<>(Map.of(
                "from",
                String.valueOf(home.enclosureId()),
                "animalIds",
                animal.id() + "," + group,
                "to",
                String.valueOf(empty),
                "at",
                now(5),
                "reason",
                "more room"));
        form.putAll(others);
        return form;
    }

    private String now(int minutesAgo) {
        return LocalDateTime.ofInstant(clock.instant().minus(Duration.ofMinutes(minutesAgo)), site.timeZone())
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }

    private ResultActions see(String path) throws Exception {
        return pages.perform(get(java.net.URI.create(path)).with(csrf()).with(collection.as(keeper)));
    }

    private ResultActions send(String path, Map<String, String> fields) throws Exception {
        MockHttpServletRequestBuilder request = post(path).with(csrf()).with(collection.as(keeper));
        fields.forEach(request::param);
        return pages.perform(request);
    }
}
