package dapple.review;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.reading.ReadingView;
import dapple.reading.Readings;
import dapple.review.Standing.AtPoint;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where every enclosure of a site stands now. */
@Service
public class Standings {
    /** Age from which a reading says nothing of today: 21 days (common practice, no source). */
    public static final Duration STALE_AFTER = Duration.ofDays(21);

    private static final Comparator<AtPoint> GRAVEST_FIRST = Comparator.comparing(AtPoint::state)
            .thenComparing(AtPoint::mayExceed, Comparator.reverseOrder())
            .thenComparing(point -> point.since().orElse(Instant.MAX));

    private final Enclosures enclosures;
    private final Animals animals;
    private final Targets targets;
    private final Readings readings;
    private final Clock clock;

    Standings(Enclosures enclosures, Animals animals, Targets targets, Readings readings, Clock clock) {
        this.enclosures = enclosures;
        this.animals = animals;
        this.targets = targets;
        this.readings = readings;
        this.clock = clock;
    }

    /** In walking order. */
    @Transactional(readOnly = true)
    public List<Standing> at(long siteId) {
        Instant now = clock.instant();
        Known known = new Known(
                now,
                enclosures.pointsByEnclosure(siteId),
                animals.byEnclosure(siteId, now),
                targets.speciesById(siteId),
                readings.latestAtSite(siteId),
                enclosures.plannedOffAt(siteId, now));
        return enclosures.inWalkingOrder(siteId).stream().map(known::standing).toList();
    }

    /** One enclosure alone. */
    @Transactional(readOnly = true)
    public EnclosureNow of(long siteId, long enclosureId) {
        Instant now = clock.instant();
        List<PointFacts> points = enclosures.pointsOf(siteId, enclosureId);
        List<AnimalFacts> living = animals.inEnclosure(siteId, enclosureId, now);
        Map<Long, ReadingView> latest = readings.latestIn(siteId, enclosureId);
        Known known = new Known(
                now,
                Map.of(enclosureId, points),
                Map.of(enclosureId, living),
                targets.speciesById(siteId),
                latest,
                enclosures.plannedOffAt(siteId, now));
        return new EnclosureNow(known.standing(enclosures.get(siteId, enclosureId)), points, latest, living);
    }

    /** What is known of a site at an instant. */
    private record Known(
            Instant now,
            Map<Long, List<PointFacts>> points,
            Map<Long, List<AnimalFacts>> occupants,
            Map<Long, SpeciesFacts> species,
            Map<Long, ReadingView> latest,
            Map<Long, PlannedOffTime> plannedOff) {

        Standing standing(EnclosureFacts enclosure) {
            List<SpeciesFacts> living = occupants.getOrDefault(enclosure.id(), List.of()).stream()
                    .map(AnimalFacts::speciesId)
                    .distinct()
                    .flatMap(id -> Stream.ofNullable(species.get(id)))
                    .toList();
            List<AtPoint> found = points.getOrDefault(enclosure.id(), List.of()).stream()
                    .filter(point -> point.role() != PointRole.KEEPER)
                    .flatMap(point -> at(point).stream())
                    .sorted(GRAVEST_FIRST)
                    .toList();
            return new Standing(enclosure, living, found, Optional.ofNullable(plannedOff.get(enclosure.id())));
        }

        /** A point over its ceiling stays so until it is read again, however old the reading. */
        private Optional<AtPoint> at(PointFacts point) {
            Optional<ReadingView> view = Optional.ofNullable(latest.get(point.id()));
            boolean harms = view.flatMap(ReadingView::state)
                    .filter(state -> state == State.OVER_CEILING)
                    .isPresent();
            if (!harms && view.filter(this::isRecent).isEmpty()) {
                return Optional.of(new AtPoint(point, State.STALE, view));
            }
            return view.flatMap(ReadingView::state).map(state -> new AtPoint(point, state, view));
        }

        private boolean isRecent(ReadingView view) {
            return view.reading().takenAt().plus(STALE_AFTER).isAfter(now);
        }
    }
}
