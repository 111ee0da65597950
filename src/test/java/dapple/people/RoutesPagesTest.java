package dapple.people;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import dapple.animal.Animals;
import dapple.door.Doors;
import dapple.draft.DraftPlace;
import dapple.draft.DraftRig;
import dapple.draft.Drafts;
import dapple.enclosure.Enclosures;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.Lamps;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.order.NewOrder;
import dapple.order.Ordered;
import dapple.order.Ordering;
import dapple.rig.Circuits;
import dapple.round.Cadence;
import dapple.round.DueDays;
import dapple.round.GivenTo;
import dapple.round.PlanDetails;
import dapple.round.RoundArranging;
import dapple.site.Open;
import dapple.site.SiteFacts;
import dapple.site.SourceMark;
import dapple.species.SpeciesFacts;
import dapple.testing.PagesTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** Walks every route with every role, signed out, and with a person of another site. */
@PagesTest
class RoutesPagesTest {
    private static final Set<String> OF_NO_SITE = Set.of("/records/import/templates/{subject}.csv");
    private static final Pattern VARIABLE = Pattern.compile("\\{(\\w+)}");

    @Autowired
    private TestCollection collection;

    @Autowired
    private RequestMappingHandlerMapping requestMappingHandlerMapping;

    @Autowired
    private MockMvc pages;

    @Autowired
    private Keys keys;

    @Autowired
    private Enclosures enclosures;

    @Autowired
    private Meters meters;

    @Autowired
    private Animals animals;

    @Autowired
    private Ordering ordering;

    @Autowired
    private Lamps lamps;

    @Autowired
    private Circuits circuits;

    @Autowired
    private Drafts drafts;

    @Autowired
    private RoundArranging rounds;

    @Autowired
    private Doors doors;

    private SiteFacts site;
    private Map<String, String> values = Map.of();

    @BeforeEach
    void furnish() throws Exception {
        site = collection.site();
        SignedIn keeper = collection.person(site, Role.KEEPER);
        SpeciesFacts species = collection.species(site, "Pogona vitticeps");
        Home home = collection.home(site, keeper, species);
        MeterFacts meter = collection.meter(site);
        values = new HashMap<>(animalValues(home));
        values.putAll(Map.of(
                "speciesId", String.valueOf(species.id()),
                "enclosureId", String.valueOf(home.enclosureId()),
                "pointId", String.valueOf(home.basking().id()),
                "animalId", String.valueOf(home.animal().id()),
                "personId", String.valueOf(collection.person(site, Role.KEEPER).personId()),
                "keyId", key(keeper),
                "roomId", String.valueOf(room(home)),
                "offId", "1",
                "visitKey", UUID.randomUUID().toString(),
                "readingId", reading(keeper, home, meter)));
        values.put("meterId", String.valueOf(meter.id()));
        values.put("calibrationId", String.valueOf(calibration(keeper, meter)));
        values.put(
                "circuitId",
                String.valueOf(circuits.add(site.id(), Optional.empty(), "A1").id()));
        values.put("alarmId", "999");
        values.put("day", "1999-12-31");
        values.put("eventId", "999");
        values.put("comparisonId", "999");
        values.putAll(round(home));
        values.put("doorCode", door(keeper, home));
        values.put("photoId", "999");
        values.put("copyKey", UUID.randomUUID().toString());
        values.put("runId", "999");
        values.put("subject", "READING");
        values.put("findingId", "999");
        values.putAll(stock(keeper));
        values.putAll(partsOfRig());
        DraftPlace desk = new DraftPlace(site.id(), home.enclosureId());
        values.put("draftId", String.valueOf(drafts.make(desk, "Plan A", DraftRig.empty(), keeper.personId())));
    }

    private Map<String, String> round(Home home) {
        LocalDate today = LocalDate.now(site.timeZone());
        DueDays days = new DueDays(new Cadence.Every(1), today.minusDays(1), Optional.empty());
        List<Long> doors = List.of(home.enclosureId());
        GivenTo keepers = new GivenTo.Holders(Role.KEEPER);
        long plan = rounds.add(site.id(), new PlanDetails("Round", days, keepers, doors));
        return Map.of("planId", String.valueOf(plan), "dueOn", today.toString());
    }

    private Map<String, String> animalValues(Home home) {
        long animal = home.animal().id();
        SignedIn vet = collection.person(site, Role.VET);
        long order = ordering.place(
                site.id(),
                new NewOrder(
                        animal,
                        new Ordered.UvOff(),
                        "for a test",
                        Optional.empty(),
                        LocalDate.now(site.timeZone()).plusDays(7),
                        UUID.randomUUID(),
                        vet.personId()));
        long stay = animals.staysOf(site.id(), animal).get(0).id();
        return Map.of("orderId", String.valueOf(order), "stayId", String.valueOf(stay));
    }

    private Map<String, String> stock(SignedIn keeper) {
        LampModelFacts model = collection.lampModel(site, LampClass.TUBE_T5);
        LampFacts lamp = collection.lamp(site, model);
        LampOutput output = new LampOutput(Quantity.UV_INDEX, 2.4, 0.3, 0.1, SourceMark.MEASURED, "for a test");
        long measured = lamps.measure(site.id(), lamp.id(), output, Instant.EPOCH, keeper.personId());
        return Map.of(
                "modelId", String.valueOf(model.id()),
                "lampId", String.valueOf(lamp.id()),
                "outputId", String.valueOf(measured),
                "quantity", "UV_INDEX");
    }

    /** No part needs to be there: whose enclosure it is decides. */
    private static Map<String, String> partsOfRig() {
        return Map.of("fittingId", "999", "coverId", "999", "furnitureId", "999");
    }

    private String reading(SignedIn keeper, Home home, MeterFacts meter) throws Exception {
        String path = "/enclosures/" + home.enclosureId() + "/visits/" + UUID.randomUUID() + "/points/"
                + home.basking().id();
        String redirect = pages.perform(MockMvcRequestBuilders.post(path)
                        .param("key", UUID.randomUUID().toString())
                        .param("meterId", String.valueOf(meter.id()))
                        .param("amount", "3.4")
                        .with(csrf())
                        .with(collection.as(keeper)))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Optional.ofNullable(redirect).orElseThrow().replace("/readings/", "");
    }

    private long calibration(SignedIn keeper, MeterFacts meter) {
        Instant from = Instant.parse("2026-03-01T00:00:00Z");
        NewCalibration calibration = new NewCalibration(from, 1, LocalDate.parse("2027-03-01"), "for a test");
        return meters.calibrate(site.id(), meter.id(), calibration, keeper.personId())
                .id();
    }

    private String door(SignedIn keeper, Home home) {
        return doors.coded(site.id(), Set.of(home.enclosureId()), keeper.personId()).values().stream()
                .map(door -> door.code().text())
                .findFirst()
                .orElseThrow();
    }

    private long room(Home home) {
        return enclosures.get(site.id(), home.enclosureId()).roomId();
    }

    private String key(SignedIn keeper) {
        KeyOwner owner = new KeyOwner(keeper.siteId(), keeper.personId());
        keys.make(owner, "for a test");
        return String.valueOf(keys.of(owner).get(0).id());
    }

    @Test
    void everyRouteNamesItsActionOrIsOpen() {
        assertThat(routes())
                .isNotEmpty()
                .allMatch(route -> route.isOpen() || route.action().isPresent());
    }

    @Test
    void everyPathVariableIsTried() {
        assertThat(routes().stream().flatMap(route -> route.variables().stream()))
                .allMatch(values::containsKey);
    }

    @Test
    void everyRoleTakesWhatItsActionsAllowAndNothingElse() throws Exception {
        for (Role role : Role.values()) {
            SignedIn person = collection.person(site, role);
            for (Route route : routes()) {
                int status = ask(route, Optional.of(person)).getStatus();
                boolean allowed = route.isOpen()
                        || route.action()
                                .filter(action -> action.isAllowedTo(role))
                                .isPresent();
                if (allowed) {
                    assertThat(status).as(role + " " + route).isNotIn(401, 403, 500);
                } else {
                    assertThat(status).as(role + " " + route).isEqualTo(403);
                }
            }
        }
    }

    /** Asking the engine stores nothing; the scheme is open to all, a cookie of one's own. */
    @Test
    void anInspectorPostsNothingButWhatIsTheirOwn() {
        assertThat(routes().stream()
                        .filter(route -> route.method() != RequestMethod.GET)
                        .flatMap(route -> route.action().stream())
                        .filter(action -> action.isAllowedTo(Role.INSPECTOR)))
                .containsOnly(Action.KEEP_OWN_ACCOUNT, Action.USE_ENGINE);
    }

    @Test
    void whoIsSignedOutIsAskedToSignIn() throws Exception {
        for (Route route : routes()) {
            MockHttpServletResponse response = ask(route, Optional.empty());
            if (route.isOpen()) {
                assertThat(response.getStatus()).as(route.toString()).isNotIn(401, 403, 500);
            } else if (route.isForPrograms()) {
                assertThat(response.getStatus()).as(route.toString()).isEqualTo(401);
            } else {
                assertThat(response.getRedirectedUrl()).as(route.toString()).endsWith("/sign-in");
            }
        }
    }

    @Test
    void nothingOfASiteIsFoundFromAnother() throws Exception {
        SignedIn stranger = collection.person(collection.site(), Role.values());
        for (Route route : routes()) {
            if (!route.variables().isEmpty() && !OF_NO_SITE.contains(route.pattern())) {
                assertThat(ask(route, Optional.of(stranger)).getStatus())
                        .as(route.toString())
                        .isEqualTo(404);
            }
        }
    }

    @Test
    void aSessionOpensNoRouteForPrograms() throws Exception {
        SignedIn person = collection.person(site, Role.values());
        for (Route route : routes()) {
            if (route.isForPrograms()) {
                assertThat(pages.perform(request(route).with(csrf()).session(session(person)))
                                .andReturn()
                                .getResponse()
                                .getStatus())
                        .as(route.toString())
                        .isEqualTo(401);
            }
        }
    }

    private static MockHttpSession session(SignedIn person) {
        MockHttpSession session = new MockHttpSession();
        session.setAttribute(
                HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY,
                new SecurityContextImpl(PasswordSignIn.of(person)));
        return session;
    }

    @Test
    void nothingIsPostedWithoutItsToken() throws Exception {
        SignedIn person = collection.person(site, Role.values());
        for (Route route : routes()) {
            if (route.method() == RequestMethod.POST && !route.isForPrograms()) {
                int status = pages.perform(request(route).with(collection.as(person)))
                        .andReturn()
                        .getResponse()
                        .getStatus();
                assertThat(status).as(route.toString()).isEqualTo(403);
            }
        }
    }

    @Test
    void whatNoControllerAnswersIsNotFound() throws Exception {
        SignedIn person = collection.person(site, Role.values());
        assertThat(pages.perform(MockMvcRequestBuilders.get("/nothing/here").with(collection.as(person)))
                        .andReturn()
                        .getResponse()
                        .getStatus())
                .isEqualTo(404);
    }

    private MockHttpServletResponse ask(Route route, Optional<SignedIn> person) throws Exception {
        MockHttpServletRequestBuilder request = request(route);
        if (route.isForPrograms()) {
            person.ifPresent(present -> request.header(HttpHeaders.AUTHORIZATION, "Bearer " + program(present)));
        } else {
            request.with(csrf());
            person.ifPresent(present -> request.with(collection.as(present)));
        }
        return pages.perform(request).andReturn().getResponse();
    }

    private String program(SignedIn person) {
        return keys.make(new KeyOwner(person.siteId(), person.personId()), "for a test");
    }

    private MockHttpServletRequestBuilder request(Route route) {
        String path = VARIABLE.matcher(route.pattern()).replaceAll(found -> values.getOrDefault(found.group(1), "?"));
        return MockMvcRequestBuilders.request(HttpMethod.valueOf(route.method().name()), path)
                .param("key", UUID.randomUUID().toString())
                .param("outcome", "COULD_NOT_REACH")
                .param("amount", "3.4")
                .param("reason", "for a test");
    }

    private List<Route> routes() {
        return requestMappingHandlerMapping.getHandlerMethods().entrySet().stream()
                .filter(entry -> entry.getValue().getBeanType().getPackageName().startsWith("dapple"))
                .flatMap(entry -> Route.of(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing(Route::toString))
                .toList();
    }

    /** One method on one path. */
    private record Route(RequestMethod method, String pattern, HandlerMethod handler) {
        static Stream<Route> of(RequestMappingInfo mapping, HandlerMethod handler) {
            Set<RequestMethod> methods = mapping.getMethodsCondition().getMethods();
            return mapping.getPatternValues().stream()
                    .flatMap(pattern -> methods.stream().map(method -> new Route(method, pattern, handler)));
        }

        boolean isForPrograms() {
            return pattern.startsWith("/api/");
        }

        boolean isOpen() {
            return AnnotatedElementUtils.hasAnnotation(handler.getMethod(), Open.class)
                    || AnnotatedElementUtils.hasAnnotation(handler.getBeanType(), Open.class);
        }

        Optional<Action> action() {
            return Stream.of(handler.getMethod(), handler.getBeanType())
                    .flatMap(place ->
                            Optional.ofNullable(AnnotatedElementUtils.findMergedAnnotation(place, Allowed.class))
                                    .stream())
                    .map(Allowed::value)
                    .findFirst();
        }

        List<String> variables() {
            List<String> found = new ArrayList<>();
            Matcher matcher = VARIABLE.matcher(pattern);
            while (matcher.find()) {
                found.add(matcher.group(1));
            }
            return found;
        }

        @Override
        public String toString() {
            return method + " " + pattern;
        }
    }
}
