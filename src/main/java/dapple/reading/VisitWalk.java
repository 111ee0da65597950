package dapple.reading;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where one visit stands: what has been read, what is left, who lives there. */
@Service
class VisitWalk {
    private final ReadingRepository readings;
    private final UnreadPointRepository unreadPoints;
    private final Enclosures enclosures;
    private final Meters meters;
    private final Animals animals;
    private final Targets targets;
    private final Clock clock;

    VisitWalk(
            ReadingRepository readings,
            UnreadPointRepository unreadPoints,
            Enclosures enclosures,
            Meters meters,
            Animals animals,
            Targets targets,
            Clock clock) {
        this.readings = readings;
        this.unreadPoints = unreadPoints;
        this.enclosures = enclosures;
        this.meters = meters;
        this.animals = animals;
        this.targets = targets;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public Walk at(long siteId, long enclosureId, UUID visitKey) {
        EnclosureFacts enclosure = enclosures.get(siteId, enclosureId);
        List<MeterFacts> inUse = meters.inUse(siteId);
        Set<Quantity> measurable = inUse.stream().map(MeterFacts::quantity).collect(Collectors.toSet());
        List<Step> steps = enclosures.pointsOf(siteId, enclosureId).stream()
                .flatMap(point -> steps(point, measurable))
                .toList();
        Set<Step.Place> read = readings.currentOfVisit(siteId, visitKey).stream()
                .filter(Reading::isHeldAsAsked)
                .map(reading -> new Step.Place(reading.pointId(), reading.quantity()))
                .collect(Collectors.toSet());
        Map<Step.Place, Outcome> unread = unread(siteId, visitKey, steps);
        return new Walk(enclosure, visitKey, species(siteId, enclosureId), steps, read, unread, inUse);
    }

    private static Stream<Step> steps(PointFacts point, Set<Quantity> measurable) {
        List<Quantity> walked = point.measurableBy(measurable);
        return walked.stream().map(quantity -> new Step(point, quantity, quantity == walked.get(0)));
    }

    /** An outcome of a whole point stands for each of its quantities. */
    private Map<Step.Place, Outcome> unread(long siteId, UUID visitKey, List<Step> steps) {
        Map<Step.Place, Outcome> found = new HashMap<>();
        for (UnreadPoint unread : unreadPoints.ofVisit(siteId, visitKey)) {
            steps.stream()
                    .filter(step -> step.point().id() == unread.pointId())
                    .filter(step ->
                            unread.quantity().map(step.quantity()::equals).orElse(true))
                    .forEach(step -> found.put(step.place(), unread.outcome()));
        }
        return found;
    }

    private List<SpeciesFacts> species(long siteId, long enclosureId) {
        Map<Long, SpeciesFacts> byId = targets.speciesById(siteId);
        return animals.inEnclosure(siteId, enclosureId, clock.instant()).stream()
                .map(AnimalFacts::speciesId)
                .distinct()
                .flatMap(id -> Stream.ofNullable(byId.get(id)))
                .toList();
    }
}
