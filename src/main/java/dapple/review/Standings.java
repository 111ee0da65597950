package dapple.review;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.animal.Housed;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.reading.ReadingView;
import dapple.reading.Readings;
import dapple.review.Standing.AtPoint;
import dapple.site.Settings;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where every enclosure of a site stands now. */
@Service
public class Standings {
    /** Of equals the UV index decides, and of those over their ceiling the one that is farthest over it. */
    private static final Comparator<AtPoint> GRAVEST_FIRST = Comparator.comparing(AtPoint::state)
            .thenComparing(AtPoint::quantity)
            .thenComparing(AtPoint::mayExceed, Comparator.reverseOrder())
            .thenComparing(AtPoint::overCeiling, Comparator.reverseOrder())
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

    /** In walking order, by what the site has settled. */
    @Transactional(readOnly = true)
    public List<Standing> at(long siteId, Settings settings) {
        Instant now = clock.instant();
        Map<Long, List<PointFacts>> points = enclosures.pointsByEnclosure(siteId);
        Known known = new Known(
                now,
                settings.staleAfter(),
                points,
                species(animals.byEnclosure(siteId, now)),
                readings.latestAtSite(siteId, points.values().stream().flatMap(List::stream)),
                enclosures.plannedOffAt(siteId, now));
        return enclosures.inWalkingOrder(siteId).stream().map(known::standing).toList();
    }

    /** One enclosure alone. */
    @Transactional(readOnly = true)
    public EnclosureNow of(long siteId, long enclosureId, Settings settings) {
        Instant now = clock.instant();
        List<PointFacts> points = enclosures.pointsOf(siteId, enclosureId);
        List<AnimalFacts> living = animals.inEnclosure(siteId, enclosureId, now);
        Map<Long, List<ReadingView>> latest = readings.latestIn(siteId, enclosureId, points);
        Known known = new Known(
                now,
                settings.staleAfter(),
                Map.of(enclosureId, points),
                Map.of(enclosureId, species(living, targets.speciesById(siteId))),
                latest,
                enclosures.plannedOffAt(siteId, now));
        return new EnclosureNow(known.standing(enclosures.get(siteId, enclosureId)), points, latest, living);
    }

    private static Map<Long, List<SpeciesFacts>> species(Map<Long, List<Housed>> housed) {
        Map<Long, List<SpeciesFacts>> found = new HashMap<>();
        housed.forEach((enclosureId, living) -> found.put(
                enclosureId, living.stream().map(Housed::species).distinct().toList()));
        return found;
    }

    private static List<SpeciesFacts> species(List<AnimalFacts> living, Map<Long, SpeciesFacts> byId) {
        return living.stream()
                .map(AnimalFacts::speciesId)
                .distinct()
                .flatMap(id -> Stream.ofNullable(byId.get(id)))
                .toList();
    }

    /** What is known of a site at an instant. */
    private record Known(
            Instant now,
            Duration staleAfter,
            Map<Long, List<PointFacts>> points,
            Map<Long, List<SpeciesFacts>> species,
            Map<Long, List<ReadingView>> latest,
            Map<Long, PlannedOffTime> plannedOff) {

        Standing standing(EnclosureFacts enclosure) {
            List<SpeciesFacts> living = species.getOrDefault(enclosure.id(), List.of());
            List<AtPoint> found = points.getOrDefault(enclosure.id(), List.of()).stream()
                    .filter(point -> point.role() != PointRole.KEEPER)
                    .flatMap(this::at)
                    .sorted(GRAVEST_FIRST)
                    .toList();
            return new Standing(enclosure, living, found, Optional.ofNullable(plannedOff.get(enclosure.id())));
        }

        /** What was found of each quantity at a point; that the first has not been read of late is a state too. */
        private Stream<AtPoint> at(PointFacts point) {
            List<ReadingView> views = latest.getOrDefault(point.id(), List.of());
            Optional<ReadingView> first = views.stream()
                    .filter(view -> view.quantity() == point.firstQuantity())
                    .findFirst();
            boolean isStale = first.filter(view -> speaks(view, point)).isEmpty();
            Stream<AtPoint> found = views.stream()
                    .filter(view -> speaks(view, point))
                    .flatMap(view -> view.state().stream().map(state -> new AtPoint(point, state, Optional.of(view))));
            return isStale ? Stream.concat(Stream.of(new AtPoint(point, State.STALE, first)), found) : found;
        }

        /**
         * Whether a reading says something of today. One over the ceiling does until the point is read again, however
         * old; one taken while the lamps were off says nothing once they are on.
         */
        private boolean speaks(ReadingView view, PointFacts point) {
            if (view.state().equals(Optional.of(State.OVER_CEILING))) {
                return true;
            }
            boolean wasOff = view.state().equals(Optional.of(State.PLANNED_OFF));
            return isRecent(view) && (!wasOff || plannedOff.containsKey(point.enclosureId()));
        }

        private boolean isRecent(ReadingView view) {
            return view.reading().takenAt().plus(staleAfter).isAfter(now);
        }
    }
}
