package dapple.review;

import dapple.animal.Housed;
import dapple.enclosure.EnclosureToday;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.order.OrderFacts;
import dapple.order.Resident;
import dapple.order.VetOrders;
import dapple.reading.ReadingView;
import dapple.reading.Readings;
import dapple.reading.Rejudging;
import dapple.review.Standing.AtPoint;
import dapple.site.Settings;
import dapple.species.SpeciesFacts;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final VetOrders orders;
    private final Readings readings;
    private final Rejudging rejudging;
    private final Clock clock;

    Standings(Enclosures enclosures, VetOrders orders, Readings readings, Rejudging rejudging, Clock clock) {
        this.enclosures = enclosures;
        this.orders = orders;
        this.readings = readings;
        this.rejudging = rejudging;
        this.clock = clock;
    }

    /** In walking order, by what the site has settled. */
    @Transactional(readOnly = true)
    public List<Standing> at(long siteId, Settings settings) {
        Instant now = clock.instant();
        List<EnclosureToday> inUse = enclosures.inUseAt(siteId, now);
        Known known = Known.of(
                now,
                settings,
                orders.residents(siteId, now),
                readings.latestAtSite(siteId, inUse.stream().flatMap(one -> one.points().stream())),
                rejudging.underWay(siteId));
        return inUse.stream().map(known::standing).toList();
    }

    /** One enclosure alone. */
    @Transactional(readOnly = true)
    public EnclosureNow of(long siteId, long enclosureId, Settings settings) {
        Instant now = clock.instant();
        EnclosureToday today = enclosures.at(siteId, enclosureId, now);
        List<Resident> residents = orders.residents(siteId, enclosureId, now);
        Map<Long, List<ReadingView>> latest = readings.latestIn(siteId, enclosureId, today.points());
        return new EnclosureNow(
                Known.of(now, settings, residents, latest, rejudging.underWay(siteId))
                        .standing(today),
                today.points(),
                latest,
                residents.stream().map(one -> one.housed().animal()).toList());
    }

    /** What is known of those who live somewhere and of what was read there, at an instant. */
    private record Known(
            Instant now,
            Duration staleAfter,
            Map<Long, List<Housed>> housed,
            Map<Long, OrderFacts> ordered,
            Map<Long, List<ReadingView>> latest,
            Set<Long> beingJudged) {

        static Known of(
                Instant now,
                Settings settings,
                List<Resident> residents,
                Map<Long, List<ReadingView>> latest,
                Set<Long> beingJudged) {
            Map<Long, OrderFacts> ordered = new HashMap<>();
            residents.forEach(one -> one.order()
                    .ifPresent(order -> ordered.put(one.housed().animal().id(), order)));
            return new Known(
                    now,
                    settings.staleAfter(),
                    residents.stream().map(Resident::housed).collect(Collectors.groupingBy(Housed::enclosureId)),
                    ordered,
                    latest,
                    beingJudged);
        }

        Standing standing(EnclosureToday today) {
            List<SpeciesFacts> living = housed.getOrDefault(today.enclosure().id(), List.of()).stream()
                    .map(Housed::species)
                    .distinct()
                    .toList();
            boolean isOff = today.plannedOff().isPresent();
            List<AtPoint> found = today.points().stream()
                    .filter(point -> point.role() != PointRole.KEEPER)
                    .filter(this::isOfUse)
                    .flatMap(point -> at(point, isOff))
                    .sorted(GRAVEST_FIRST)
                    .toList();
            return new Standing(
                    today.enclosure(),
                    living,
                    found,
                    today.plannedOff(),
                    beingJudged.contains(today.enclosure().id()));
        }

        /** What was found of each quantity at a point; that the first has not been read of late is a state too. */
        private Stream<AtPoint> at(PointFacts point, boolean isOff) {
            List<ReadingView> views = latest.getOrDefault(point.id(), List.of());
            Optional<ReadingView> first = views.stream()
                    .filter(view -> view.quantity() == point.firstQuantity())
                    .findFirst();
            Optional<Unread> unread = views.stream()
                    .flatMap(view -> changeSince(view, point).stream())
                    .findFirst();
            boolean isStale = unread.isPresent()
                    || first.filter(view -> speaks(view, point, isOff)).isEmpty();
            Stream<AtPoint> found = views.stream()
                    .filter(view -> speaks(view, point, isOff))
                    .flatMap(view -> view.state().stream()
                            .map(state -> new AtPoint(point, state, Optional.of(view), Optional.empty())));
            return isStale ? Stream.concat(Stream.of(new AtPoint(point, State.STALE, first, unread)), found) : found;
        }

        /** What has changed of what is needed at a point since a quantity was read there. */
        private Optional<Unread> changeSince(ReadingView view, PointFacts point) {
            return orderSince(view, point)
                    .or(() -> Unread.ofTarget(view.reading(), view.newer()))
                    .or(() -> arrivalSince(view, point));
        }

        /** The newest order for one whom the point serves that has come into force since the UV index was read there. */
        private Optional<Unread> orderSince(ReadingView view, PointFacts point) {
            return Unread.ofOrders(
                    view.reading(),
                    served(point)
                            .flatMap(one ->
                                    Stream.ofNullable(ordered.get(one.animal().id()))));
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
        private boolean speaks(ReadingView view, PointFacts point, boolean isOff) {
            if (view.state().equals(Optional.of(State.OVER_CEILING))) {
                return true;
            }
            boolean wasOff = view.state().equals(Optional.of(State.PLANNED_OFF));
            return isRecent(view)
                    && changeSince(view, point)
                            .filter(change -> change.silences(view.reading()))
                            .isEmpty()
                    && (!wasOff || isOff);
        }

        private boolean isRecent(ReadingView view) {
            return view.reading().takenAt().plus(staleAfter).isAfter(now);
        }
    }
}
