package dapple.walk;

import dapple.animal.Animals;
import dapple.animal.Housed;
import dapple.door.Doors;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.expectation.Expectations;
import dapple.expectation.Expectations.Place;
import dapple.lamp.LampModelFacts;
import dapple.lamp.SpectralHazards;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.SignedIn;
import dapple.practice.MeterStandings;
import dapple.prediction.LimitsInForce;
import dapple.reading.RecentReading;
import dapple.reading.RecentReadings;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import dapple.round.RoundStep;
import dapple.round.WalkFacts;
import dapple.site.Given;
import dapple.walk.StopNow.Asked;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Gathers what a phone carries on a walk; the number of questions to the database does not grow with the walk. */
@Service
class Sheets {
    private final Enclosures enclosures;
    private final Doors doors;
    private final Animals animals;
    private final Meters meters;
    private final MeterStandings standings;
    private final Rigs rigs;
    private final LimitsInForce limits;
    private final RecentReadings readings;
    private final Expectations expectations;
    private final SpectralHazards hazards;
    private final SheetWords words;
    private final Clock clock;

    Sheets(
            Enclosures enclosures,
            Doors doors,
            Animals animals,
            Meters meters,
            MeterStandings standings,
            Rigs rigs,
            LimitsInForce limits,
            RecentReadings readings,
            Expectations expectations,
            SpectralHazards hazards,
            SheetWords words,
            Clock clock) {
        this.enclosures = enclosures;
        this.doors = doors;
        this.animals = animals;
        this.meters = meters;
        this.standings = standings;
        this.rigs = rigs;
        this.limits = limits;
        this.readings = readings;
        this.expectations = expectations;
        this.hazards = hazards;
        this.words = words;
        this.clock = clock;
    }

    /** A fresh visit at one enclosure. */
    @Transactional(readOnly = true)
    public Sheet ofDoor(SignedIn me, long enclosureId) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        List<MeterFacts> inUse = meters.inUse(me.siteId());
        Set<Quantity> measurable = inUse.stream().map(MeterFacts::quantity).collect(Collectors.toSet());
        List<Asked> asked = enclosures.pointsOf(me.siteId(), enclosureId).stream()
                .flatMap(point -> point.measurableBy(measurable).stream().map(one -> new Asked(point, one)))
                .toList();
        StopNow stop = new StopNow(enclosure, UUID.randomUUID(), asked, Set.of());
        return words.sheet(me, List.of(), List.of(stop), known(me, List.of(stop), inUse));
    }

    /** What is left of a walk, and what was done of it. */
    @Transactional(readOnly = true)
    public Sheet ofWalk(SignedIn me, WalkFacts walk) {
        Map<Long, EnclosureFacts> byId = enclosures.inWalkingOrder(me.siteId()).stream()
                .collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
        Map<Long, PointFacts> points = enclosures.pointsByEnclosure(me.siteId()).values().stream()
                .flatMap(List::stream)
                .collect(Collectors.toMap(PointFacts::id, Function.identity()));
        List<StopNow> stops = walk.stops().stream()
                .filter(stop -> stop.isWalked() && byId.containsKey(stop.enclosureId()))
                .map(stop -> new StopNow(
                        Given.of(byId.get(stop.enclosureId())),
                        visitKey(me, walk, stop.enclosureId()),
                        asked(stop.steps(), points),
                        Set.copyOf(asked(
                                stop.steps().stream().filter(RoundStep::isDone).toList(), points))))
                .toList();
        return words.sheet(
                me,
                List.of(SheetWords.plan(walk.plan(), walk.dueOn())),
                stops,
                known(me, stops, meters.inUse(me.siteId())));
    }

    /** One person's two phones write one visit of a walk. */
    private static UUID visitKey(SignedIn me, WalkFacts walk, long enclosureId) {
        String name = "walk:" + walk.plan().id() + ":" + walk.dueOn() + ":" + me.personId() + ":" + enclosureId;
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    private static List<Asked> asked(List<RoundStep> steps, Map<Long, PointFacts> points) {
        return steps.stream()
                .filter(step -> points.containsKey(step.pointId()))
                .map(step -> new Asked(Given.of(points.get(step.pointId())), step.quantity()))
                .toList();
    }

    private Known known(SignedIn me, List<StopNow> stops, List<MeterFacts> inUse) {
        Instant now = clock.instant();
        Collection<Long> enclosureIds =
                stops.stream().map(stop -> stop.enclosure().id()).toList();
        List<PointFacts> points =
                stops.stream().flatMap(stop -> stop.points().stream()).toList();
        Map<Long, Rig> rigById = rigs.nowAtSite(me.siteId());
        Map<Long, List<Housed>> residents = animals.byEnclosure(me.siteId(), now);
        List<RecentReading> newest = readings.in(me.siteId(), enclosureIds, Expectations.NEWEST);
        return new Known(
                doors.open(me.siteId()),
                residents,
                rigById,
                limits.of(me.siteId(), residents, now),
                expectations.at(
                        new Expectations.Site(me.siteId(), me.zone()), points, rigById, newest, resolutions(inUse)),
                hazards.ofModels(me.siteId(), models(rigById, enclosureIds)),
                lastRead(newest),
                inUse,
                meters.calibrationsAt(me.siteId(), now),
                standings.at(me.siteId(), me.zone()));
    }

    private static List<LampModelFacts> models(Map<Long, Rig> rigById, Collection<Long> enclosureIds) {
        return enclosureIds.stream()
                .flatMap(id -> Stream.ofNullable(rigById.get(id)))
                .flatMap(rig -> rig.fittings().stream())
                .map(fitting -> fitting.lamp().model())
                .distinct()
                .toList();
    }

    private static Map<Quantity, Double> resolutions(List<MeterFacts> meters) {
        return meters.stream()
                .collect(Collectors.toMap(
                        MeterFacts::quantity, meter -> meter.uncertainty().resolution(), Math::max));
    }

    private static Map<Place, Instant> lastRead(List<RecentReading> newestFirst) {
        Map<Place, Instant> found = new HashMap<>();
        newestFirst.forEach(one -> found.putIfAbsent(new Place(one.pointId(), one.quantity()), one.takenAt()));
        return found;
    }
}
