package dapple.demo;

import dapple.agreement.Agreements;
import dapple.demo.DemoRows.Kind;
import dapple.demo.DemoRows.Space;
import dapple.enclosure.EnclosureChange;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.meter.MeterFacts;
import dapple.reading.SheetReading;
import dapple.site.Given;
import dapple.species.SpeciesFacts;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Makes the demo's collection on the first start of its profile, before the first page is served. */
@Component
@Profile("demo")
class DemoData implements SmartInitializingSingleton {
    private static final Duration STORY = Duration.ofDays(90);
    private static final Duration YEARS = Duration.ofDays(7L * DemoPast.WEEKS);

    /** Which findings have been decided about. */
    private static final String ACCEPTED = "E02";

    private static final String GIVEN = "E04";

    /** What other rigs have been thought of for. */
    private static final String DRAFTED = "E07";

    private final DemoClock clock;
    private final DemoTeam team;
    private final DemoRounds rounds;
    private final DemoYears years;
    private final Enclosures enclosures;
    private final DemoMeters meters;
    private final DemoPractice practice;
    private final DemoComparison comparison;
    private final DemoSpecies demoSpecies;
    private final DemoAnimals animals;
    private final DemoLamps lamps;
    private final DemoRigs rigs;
    private final DemoDesk desk;
    private final DemoDrafts drafts;
    private final DemoPlans plans;
    private final DemoDoors doors;
    private final DemoPhotos photos;
    private final Agreements agreements;

    DemoData(
            DemoClock clock,
            DemoTeam team,
            DemoRounds rounds,
            DemoYears years,
            Enclosures enclosures,
            DemoMeters meters,
            DemoPractice practice,
            DemoComparison comparison,
            DemoSpecies demoSpecies,
            DemoAnimals animals,
            DemoLamps lamps,
            DemoRigs rigs,
            DemoDesk desk,
            DemoDrafts drafts,
            DemoPlans plans,
            DemoDoors doors,
            DemoPhotos photos,
            Agreements agreements) {
        this.clock = clock;
        this.team = team;
        this.rounds = rounds;
        this.years = years;
        this.enclosures = enclosures;
        this.meters = meters;
        this.practice = practice;
        this.comparison = comparison;
        this.demoSpecies = demoSpecies;
        this.animals = animals;
        this.lamps = lamps;
        this.rigs = rigs;
        this.desk = desk;
        this.drafts = drafts;
        this.plans = plans;
        this.doors = doors;
        this.photos = photos;
        this.agreements = agreements;
    }

    @Override
    public void afterSingletonsInstantiated() {
        if (team.isMissing()) {
            Instant now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
            clock.whileStanding(time -> tell(now, time));
        }
    }

    private void tell(Instant now, Consumer<Instant> time) {
        Instant begin = now.minus(STORY);
        time.accept(now.minus(YEARS));
        DemoTeam.Members members = team.join();
        DemoRows rows = DemoRows.read();
        DemoRigRows rigRows = DemoRigRows.read();
        DemoPast past = new DemoPast(rigRows, rows.enclosures(), now.minus(YEARS), now);
        List<SheetReading> readings = new ArrayList<>();
        Map<String, MeterFacts> register = meters.register(members, now);
        DemoRigs.Stage stage = DemoRigs.Stage.of(members, rigRows, past, lamps.stock(members, rigRows, past, begin));
        DemoRounds.Story story = new DemoRounds.Story(members, rows, register, species(members, rows), now);
        Map<String, Long> rooms = new HashMap<>();
        Map<String, Long> byCode = new HashMap<>();
        for (Space space : rows.enclosures()) {
            Instant first = space.isGenerated() ? now.minus(YEARS) : begin;
            time.accept(first);
            long room = rooms.computeIfAbsent(
                    space.room(), name -> enclosures.addRoom(members.siteId(), name, rooms.size()));
            DemoRigs.Place place = new DemoRigs.Place(space.code(), room, furnish(story, room, space, first));
            byCode.put(space.code(), place.enclosureId());
            rigs.hang(stage, place, first);
            if (space.isGenerated()) {
                rigs.swap(stage, place, time);
                readings.addAll(years.read(story, past, place.enclosureId(), space, first));
                continue;
            }
            rounds.walk(story, place.enclosureId(), space, time);
            time.accept(now);
            story.changed(space).ifPresent(at -> rigs.change(stage, place, at));
            if (space.plannedOff()) {
                planOff(members, place.enclosureId(), now);
            }
        }
        time.accept(now);
        years.take(story, readings);
        desk.accept(members, Given.of(byCode.get(ACCEPTED)), now);
        desk.give(members, Given.of(byCode.get(GIVEN)), now);
        practice.keep(members, register, now);
        comparison.compare(members, new DemoComparison.Stock(register, byCode), now, time);
        drafts.think(members, Given.of(byCode.get(DRAFTED)), now);
        plans.plan(members, byCode, now, time);
        doors.label(members, byCode);
        photos.take(members, DemoRounds.lastVisit(DRAFTED), Given.of(byCode.get(DRAFTED)));
        agreements.renew(members.siteId());
    }

    private Map<String, SpeciesFacts> species(DemoTeam.Members members, DemoRows rows) {
        Map<String, SpeciesFacts> added = new HashMap<>();
        for (Kind kind : rows.species()) {
            SpeciesFacts species = demoSpecies.enter(members, kind);
            added.put(kind.scientificName(), species);
        }
        return added;
    }

    private long furnish(DemoRounds.Story story, long room, Space space, Instant begin) {
        DemoTeam.Members members = story.members();
        int order = enclosures.inWalkingOrder(members.siteId()).size();
        long enclosure = enclosures.add(
                members.siteId(),
                new EnclosureChange(room, space.code(), order, space.size(), space.front(), space.reach()));
        story.rows()
                .tenantsOf(space)
                .forEach(tenant ->
                        animals.arrive(members, tenant, story.speciesId(tenant.scientificName()), enclosure, begin));
        return enclosure;
    }

    private void planOff(DemoTeam.Members members, long enclosure, Instant now) {
        Instant from = now.minus(Duration.ofDays(10));
        Optional<Instant> to = Optional.of(now.plus(Duration.ofDays(80)));
        enclosures.planOff(
                members.siteId(), new PlannedOffTime(enclosure, from, to, "Winter rest"), members.supervisor());
    }
}
