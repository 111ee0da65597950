package dapple.reading;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.site.NotFoundException;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final Animals animals;
    private final Targets targets;
    private final Clock clock;

    VisitWalk(
            ReadingRepository readings,
            UnreadPointRepository unreadPoints,
            Enclosures enclosures,
            Animals animals,
            Targets targets,
            Clock clock) {
        this.readings = readings;
        this.unreadPoints = unreadPoints;
        this.enclosures = enclosures;
        this.animals = animals;
        this.targets = targets;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public Walk at(long siteId, long enclosureId, UUID visitKey) {
        EnclosureFacts enclosure = enclosures.get(siteId, enclosureId);
        List<PointFacts> points = enclosures.pointsOf(siteId, enclosureId);
        Map<Long, Outcome> unread = unreadPoints.ofVisit(siteId, visitKey).stream()
                .collect(Collectors.toMap(UnreadPoint::pointId, UnreadPoint::outcome, (one, later) -> later));
        Map<Long, Long> read = readings.currentOfVisit(siteId, visitKey).stream()
                .collect(Collectors.toMap(Reading::pointId, Reading::id, Math::max));
        return new Walk(enclosure, visitKey, species(siteId, enclosureId), points, read, unread);
    }

    private List<SpeciesFacts> species(long siteId, long enclosureId) {
        Map<Long, SpeciesFacts> byId = targets.speciesById(siteId);
        return animals.inEnclosure(siteId, enclosureId, clock.instant()).stream()
                .map(AnimalFacts::speciesId)
                .distinct()
                .flatMap(id -> Stream.ofNullable(byId.get(id)))
                .toList();
    }

    /**
     * A visit under way.
     *
     * @param read the reading of each point that has one, by point
     * @param unread why a point was not read, by point
     */
    record Walk(
            EnclosureFacts enclosure,
            UUID visitKey,
            List<SpeciesFacts> species,
            List<PointFacts> points,
            Map<Long, Long> read,
            Map<Long, Outcome> unread) {

        PointFacts point(long pointId) {
            return points.stream()
                    .filter(point -> point.id() == pointId)
                    .findFirst()
                    .orElseThrow(NotFoundException::new);
        }

        /** The first point, in walking order, that has neither a reading nor a reason. */
        public Optional<PointFacts> next() {
            return points.stream().filter(point -> !isDone(point.id())).findFirst();
        }

        public boolean isDone(long pointId) {
            return read.containsKey(pointId) || unread.containsKey(pointId);
        }

        /** The place of a point in the walk, from 1. */
        public int number(long pointId) {
            return points.indexOf(point(pointId)) + 1;
        }

        String path() {
            return "/enclosures/" + enclosure.id() + "/visits/" + visitKey;
        }

        /** Where to go on: the next point, or the end of the visit. */
        public String onward() {
            return next().map(point -> path() + "/points/" + point.id()).orElse(path());
        }
    }
}
