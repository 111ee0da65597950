package dapple.demo;

import dapple.animal.AnimalKeeping;
import dapple.animal.Animals;
import dapple.animal.Arrival;
import dapple.animal.BodyLengthFacts;
import dapple.animal.NewAnimal;
import dapple.demo.DemoRows.Kind;
import dapple.demo.DemoRows.Space;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.meter.NewCalibration;
import dapple.species.SpeciesFacts;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
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

    /** The enclosure that has a rig on record. */
    private static final String RIGGED = "E07";

    /** Of the animal there, invented. */
    private static final double BODY_METRES = 0.18;

    private final DemoClock clock;
    private final DemoTeam team;
    private final DemoRounds rounds;
    private final Enclosures enclosures;
    private final Meters meters;
    private final DemoSpecies demoSpecies;
    private final Animals animals;
    private final DemoLamps lamps;
    private final DemoRigs rigs;
    private final AnimalKeeping keeping;

    DemoData(
            DemoClock clock,
            DemoTeam team,
            DemoRounds rounds,
            Enclosures enclosures,
            Meters meters,
            DemoSpecies demoSpecies,
            Animals animals,
            DemoLamps lamps,
            DemoRigs rigs,
            AnimalKeeping keeping) {
        this.clock = clock;
        this.team = team;
        this.rounds = rounds;
        this.enclosures = enclosures;
        this.meters = meters;
        this.demoSpecies = demoSpecies;
        this.animals = animals;
        this.lamps = lamps;
        this.rigs = rigs;
        this.keeping = keeping;
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
        time.accept(begin);
        DemoTeam.Members members = team.join();
        DemoRows rows = DemoRows.read();
        MeterFacts meter = meter(members, begin);
        lamps.stock(members, begin);
        Map<String, SpeciesFacts> species = species(members, rows);
        DemoRounds.Story story = new DemoRounds.Story(members, meter, now);
        Map<String, Long> rooms = new HashMap<>();
        for (Space space : rows.enclosures()) {
            long room = rooms.computeIfAbsent(
                    space.room(), name -> enclosures.addRoom(members.siteId(), name, rooms.size()));
            long enclosure = furnish(members, room, space, species, begin);
            if (space.code().equals(RIGGED)) {
                rigs.hang(members, enclosure, begin);
            }
            rounds.walk(story, enclosure, space, rows.pointsOf(space), time);
            if (space.plannedOff()) {
                time.accept(now);
                planOff(members, enclosure, now);
            }
            time.accept(begin);
        }
    }

    private MeterFacts meter(DemoTeam.Members members, Instant begin) {
        MeterFacts meter = meters.add(members.siteId(), "M1", "UV index meter", Quantity.UV_INDEX, 0.1);
        meters.add(members.siteId(), "M2", "UV index meter, spare", Quantity.UV_INDEX, 0.1);
        LocalDate due = LocalDate.ofInstant(begin, ZoneOffset.UTC).plusYears(1);
        meters.calibrate(
                members.siteId(), meter.id(), new NewCalibration(begin, 1.0, due, "C-0417"), members.supervisor());
        return meter;
    }

    private Map<String, SpeciesFacts> species(DemoTeam.Members members, DemoRows rows) {
        Map<String, SpeciesFacts> added = new HashMap<>();
        for (Kind kind : rows.species()) {
            SpeciesFacts species = demoSpecies.enter(members, kind);
            added.put(kind.scientificName(), species);
        }
        return added;
    }

    private long furnish(
            DemoTeam.Members members, long room, Space space, Map<String, SpeciesFacts> species, Instant begin) {
        int order = enclosures.inWalkingOrder(members.siteId()).size();
        long enclosure = enclosures.add(members.siteId(), room, space.code(), order, space.size());
        SpeciesFacts kind =
                Optional.ofNullable(species.get(space.scientificName())).orElseThrow();
        long animal = animals.add(members.siteId(), new NewAnimal(space.accessionNumber(), space.animal(), kind.id()))
                .id();
        animals.move(members.siteId(), new Arrival(animal, enclosure, begin, members.supervisor()));
        if (space.code().equals(RIGGED)) {
            BodyLengthFacts length = new BodyLengthFacts(BODY_METRES, LocalDate.ofInstant(begin, ZoneOffset.UTC));
            keeping.addLength(members.siteId(), animal, length, members.supervisor());
        }
        return enclosure;
    }

    private void planOff(DemoTeam.Members members, long enclosure, Instant now) {
        Instant from = now.minus(Duration.ofDays(10));
        Optional<Instant> to = Optional.of(now.plus(Duration.ofDays(80)));
        enclosures.planOff(
                members.siteId(), new PlannedOffTime(enclosure, from, to, "Winter rest"), members.supervisor());
    }
}
