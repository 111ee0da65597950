package dapple.review;

import dapple.animal.Animals;
import dapple.animal.Housed;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.EnclosureToday;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.order.OrderFacts;
import dapple.order.VetOrders;
import dapple.reading.ReadingView;
import dapple.reading.Readings;
import dapple.review.Standing.AtPoint;
import dapple.site.Settings;
import dapple.species.SpeciesFacts;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
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
    private final VetOrders orders;
    private final Readings readings;
    private final Clock clock;

    Standings(Enclosures enclosures, Animals animals, VetOrders orders, Readings readings, Clock clock) {
        this.enclosures = enclosures;
        this.animals = animals;
        this.orders = orders;
        this.readings = readings;
        this.clock = clock;
    }

    /** In walking order, by what the site has settled. */
    @Transactional(readOnly = true)
    public List<Standing> at(long siteId, Settings settings) {
        Instant now = clock.instant();
        List<EnclosureToday> inUse = enclosures.inUseAt(siteId, now);
        Map<Long, List<PointFacts>> points = enclosures.pointsByEnclosure(siteId);
        Map<Long, List<Housed>> housed = animals.byEnclosure(siteId, now);
        Known known = new Known(
                now,
                settings.staleAfter(),
                points,
                housed,
                ordered(siteId, housed.values().stream().flatMap(List::stream), now),
                readings.latestAtSite(siteId, points.values().stream().flatMap(List::stream)),
                plannedOff(inUse));
        return inUse.stream().map(one -> known.standing(one.enclosure())).toList();
    }

    /** One enclosure alone. */
    @Transactional(readOnly = true)
    public EnclosureNow of(long siteId, long enclosureId, Settings settings) {
        Instant now = clock.instant();
        List<PointFacts> points = enclosures.pointsOf(siteId, enclosureId);
        List<Housed> housed = animals.housedIn(siteId, enclosureId, now);
        Map<Long, List<ReadingView>> latest = readings.latestIn(siteId, enclosureId, points);
        Known known = new Known(
                now,
                settings.staleAfter(),
                Map.of(enclosureId, points),
                Map.of(enclosureId, housed),
                ordered(siteId, housed.stream(), now),
                latest,
                enclosures.plannedOffAt(siteId, now));
        return new EnclosureNow(
                known.standing(enclosures.get(siteId, enclosureId)),
                points,
                latest,
                housed.stream().map(Housed::animal).toList());
    }

    private static Map<Long, PlannedOffTime> plannedOff(List<EnclosureToday> inUse) {
        return inUse.stream()
                .flatMap(one -> one.plannedOff().stream())
                .collect(Collectors.toMap(PlannedOffTime::enclosureId, Function.identity()));
    }

    private Map<Long, OrderFacts> ordered(long siteId, Stream<Housed> housed, Instant now) {
        return orders.inForceOf(siteId, housed.map(one -> one.animal().id()).toList(), now);
    }

    /** What is known of a site at an instant. */
    private record Known(
            Instant now,
            Duration staleAfter,
            Map<Long, List<PointFacts>> points,
            Map<Long, List<Housed>> housed,
            Map<Long, OrderFacts> ordered,
            Map<Long, List<ReadingView>> latest,
            Map<Long, PlannedOffTime> plannedOff) {

        Standing standing(EnclosureFacts enclosure) {
            List<SpeciesFacts> living = housed.getOrDefault(enclosure.id(), List.of()).stream()
                    .map(Housed::species)
                    .distinct()
                    .toList();
            List<AtPoint> found = points.getOrDefault(enclosure.id(), List.of()).stream()
                    .filter(point -> point.role() != PointRole.KEEPER)
                    .filter(this::isOfUse)
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
            Optional<Unread> unread = views.stream()
                    .flatMap(view -> changeSince(view, point).stream())
                    .findFirst();
            boolean isStale = unread.isPresent()
                    || first.filter(view -> speaks(view, point)).isEmpty();
            Stream<AtPoint> found = views.stream()
                    .filter(view -> speaks(view, point))
                    .flatMap(view -> view.state().stream()
                            .map(state -> new AtPoint(point, state, Optional.of(view), Optional.empty())));
            return isStale ? Stream.concat(Stream.of(new AtPoint(point, State.STALE, first, unread)), found) : found;
        }

        /** What has changed of what is needed at a point since a quantity was read there. */
        private Optional<Unread> changeSince(ReadingView view, PointFacts point) {
            return orderSince(view, point).or(() -> targetSince(view)).or(() -> arrivalSince(view, point));
        }

        /** The newest order for one whom the point serves that has come into force since the UV index was read there. */
        private Optional<Unread> orderSince(ReadingView view, PointFacts point) {
            return Unread.ofOrders(
                    view.reading(),
                    served(point)
                            .flatMap(one ->
                                    Stream.ofNullable(ordered.get(one.animal().id()))));
        }

        private static Optional<Unread> targetSince(ReadingView view) {
            return view.newer().map(target -> new Unread(Unread.Why.TARGET, target.approvedAt()));
        }

        /** When the last of other species than the reading was judged for moved in after it. */
        private Optional<Unread> arrivalSince(ReadingView view, PointFacts point) {
            Map<Long, Instant> since = served(point)
                    .collect(Collectors.toMap(
                            one -> one.species().id(),
                            Housed::from,
                            (one, other) -> one.isBefore(other) ? one : other));
            return since.entrySet().stream()
                    .filter(kind -> !view.reading().speciesId().equals(Optional.of(kind.getKey())))
                    .map(Map.Entry::getValue)
                    .filter(from -> from.isAfter(view.reading().takenAt()))
                    .max(Comparator.naturalOrder())
                    .map(from -> new Unread(Unread.Why.ARRIVAL, from));
        }

        /** One that is meant for others than those who live there now tells nothing of them. */
        private boolean isOfUse(PointFacts point) {
            return point.served().isAll() || served(point).findAny().isPresent();
        }

        private Stream<Housed> served(PointFacts point) {
            return housed.getOrDefault(point.enclosureId(), List.of()).stream()
                    .filter(one -> point.serves(one.species().id(), one.animal().id()));
        }

        /**
         * Whether a reading says something of today. One over the ceiling does until the point is read again, however
         * old; one taken while the lamps were off says nothing once they are on, and one of the UV index nothing of a
         * vet's order that came later. Where only the target changed, or another species moved in, what is amiss stays
         * so until the point is read again; nothing else does.
         */
        private boolean speaks(ReadingView view, PointFacts point) {
            if (view.state().equals(Optional.of(State.OVER_CEILING))) {
                return true;
            }
            boolean wasOff = view.state().equals(Optional.of(State.PLANNED_OFF));
            return isRecent(view)
                    && changeSince(view, point)
                            .filter(change -> change.silences(view.reading()))
                            .isEmpty()
                    && (!wasOff || plannedOff.containsKey(point.enclosureId()));
        }

        private boolean isRecent(ReadingView view) {
            return view.reading().takenAt().plus(staleAfter).isAfter(now);
        }
    }
}
