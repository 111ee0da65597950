package dapple.testing;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.NewAnimal;
import dapple.enclosure.Enclosures;
import dapple.enclosure.Facing;
import dapple.enclosure.NewPoint;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelChange;
import dapple.lamp.LampModelFacts;
import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.FirstRun;
import dapple.people.NewPerson;
import dapple.people.People;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import dapple.site.SourceMark;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import dapple.species.SpeciesName;
import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.SourcedLimit;
import dapple.target.Targets;
import dapple.target.ZoneLimits;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Makes small collections to try things on: each its own site, so that tests do not see one another's. */
@TestComponent
public class TestCollection {
    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final String PASSWORD = "four plain words here";

    private final FirstRun firstRun;
    private final Sites sites;
    private final People people;
    private final Enclosures enclosures;
    private final Meters meters;
    private final SpeciesKeeping speciesKeeping;
    private final Targets targets;
    private final ZoneLimits zoneLimits;
    private final Animals animals;
    private final Lamps lamps;
    private final Clock clock;

    TestCollection(
            FirstRun firstRun,
            Sites sites,
            People people,
            Enclosures enclosures,
            Meters meters,
            SpeciesKeeping speciesKeeping,
            Targets targets,
            ZoneLimits zoneLimits,
            Animals animals,
            Lamps lamps,
            Clock clock) {
        this.firstRun = firstRun;
        this.sites = sites;
        this.people = people;
        this.enclosures = enclosures;
        this.meters = meters;
        this.speciesKeeping = speciesKeeping;
        this.targets = targets;
        this.zoneLimits = zoneLimits;
        this.animals = animals;
        this.lamps = lamps;
        this.clock = clock;
    }

    /** A site with nobody and nothing in it. */
    public synchronized SiteFacts site() {
        int number = NUMBER.incrementAndGet();
        ZoneId zone = ZoneId.of("Europe/London");
        NewPerson administrator = new NewPerson("first" + number, "First Administrator", PASSWORD);
        return firstRun.isPending()
                ? firstRun.begin("Site " + number, zone, administrator)
                : sites.add("Site " + number, zone);
    }

    /** Somebody with these roles at a site. */
    public SignedIn person(SiteFacts site, Role... roles) {
        Set<Role> held = EnumSet.noneOf(Role.class);
        held.addAll(Set.of(roles));
        String name = "person" + NUMBER.incrementAndGet();
        long id = people.add(site.id(), new NewPerson(name, "Name of " + name, PASSWORD), held, Optional.empty());
        return new SignedIn(id, name, "Name of " + name, site.id(), site.name(), site.timeZone(), Settings.USUAL, held);
    }

    /** The password of every person made here. */
    public String password() {
        return PASSWORD;
    }

    /** Signs a person in for one request. */
    public RequestPostProcessor as(SignedIn person) {
        return SecurityMockMvcRequestPostProcessors.authentication(
                UsernamePasswordAuthenticationToken.authenticated(person, null, Set.of()));
    }

    public MeterFacts meter(SiteFacts site) {
        return meters.add(site.id(), "M" + NUMBER.incrementAndGet(), "UV index meter", Quantity.UV_INDEX, 0.1);
    }

    public SpeciesFacts species(SiteFacts site, String scientificName) {
        return speciesKeeping.add(site.id(), new SpeciesName(scientificName, scientificName));
    }

    /** A meter of any quantity, with a display of tenths. */
    public MeterFacts meter(SiteFacts site, Quantity quantity) {
        return meters.add(site.id(), "M" + NUMBER.incrementAndGet(), "meter", quantity, 0.1);
    }

    /** A point at which several quantities are asked. */
    public PointFacts point(SiteFacts site, long enclosure, String code, PointRole role, List<Quantity> quantities) {
        NewPoint point = new NewPoint(code, "a place", role, Facing.STRONGEST, Optional.empty(), quantities);
        return enclosures.addPoint(site.id(), enclosure, point);
    }

    /** A species with the suggested limits of a zone, and others besides, in force from now on. */
    public SpeciesFacts species(
            SiteFacts site, SignedIn approver, String scientificName, UvZone zone, SourcedLimit... besides) {
        SpeciesFacts species = species(site, scientificName);
        List<SourcedLimit> limits =
                Stream.concat(zoneLimits.of(zone).stream(), Stream.of(besides)).toList();
        targets.approve(site.id(), new Approval(species.id(), zone, limits, approver.personId(), "for a test"));
        return species;
    }

    /** An enclosure with one animal, and basking, gradient, shade and nearest reachable points. */
    public Home home(SiteFacts site, SignedIn mover, SpeciesFacts species) {
        int number = NUMBER.incrementAndGet();
        long room = enclosures.addRoom(site.id(), "Room " + number, number);
        long enclosure = enclosures.add(site.id(), room, "E" + number, number, Optional.empty());
        AnimalFacts animal = animals.add(site.id(), new NewAnimal("2026-" + number, "Animal " + number, species.id()));
        Instant hourAgo = clock.instant().minus(Duration.ofHours(1));
        animals.move(site.id(), new Arrival(animal.id(), enclosure, hourAgo, mover.personId()));
        return new Home(
                enclosure,
                animal,
                point(site, enclosure, "P1", PointRole.BASKING),
                point(site, enclosure, "P2", PointRole.GRADIENT),
                point(site, enclosure, "P3", PointRole.SHADE),
                point(site, enclosure, "P4", PointRole.NEAREST_REACHABLE));
    }

    /** An enclosure in which nobody lives. */
    public long emptyEnclosure(SiteFacts site) {
        int number = NUMBER.incrementAndGet();
        long room = enclosures.addRoom(site.id(), "Room " + number, number);
        return enclosures.add(site.id(), room, "E" + number, number, Optional.empty());
    }

    public PointFacts point(SiteFacts site, long enclosure, String code, PointRole role) {
        return enclosures.addPoint(
                site.id(), enclosure, new NewPoint(code, "a place", role, Facing.STRONGEST, Optional.empty()));
    }

    /** A tube of 0.55 m that gives a UV index of 3.0 at 0.3 m; invented. Of its spectrum nothing is known. */
    public LampModelFacts lampModel(SiteFacts site, LampClass lampClass) {
        String name = "Model " + NUMBER.incrementAndGet();
        LampShape tube = new LampShape.Line(0.55, Optional.of(1.5), 0.05);
        long model =
                lamps.addModel(site.id(), new LampModelChange(name, lampClass, Optional.of(24.0), Optional.of(tube)));
        lamps.stateOutput(
                site.id(),
                model,
                new LampOutput(Quantity.UV_INDEX, 3.0, 0.3, 0.1, SourceMark.FROM_MEMORY, "invented for a test"));
        return lamps.model(site.id(), model);
    }

    /** A new lamp of a model, with a tag of its own. */
    public LampFacts lamp(SiteFacts site, LampModelFacts model) {
        String tag = "L" + NUMBER.incrementAndGet();
        long lamp = lamps.add(site.id(), new NewLamp(tag, model.id(), Optional.of(0.0), Optional.empty(), "shelf"));
        return lamps.get(site.id(), lamp);
    }

    /** An enclosure with its animal and its four points. */
    public record Home(
            long enclosureId,
            AnimalFacts animal,
            PointFacts basking,
            PointFacts gradient,
            PointFacts shade,
            PointFacts nearest) {

        public List<PointFacts> points() {
            return List.of(basking, gradient, shade, nearest);
        }
    }
}
