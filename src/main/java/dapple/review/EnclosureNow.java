package dapple.review;

import dapple.animal.AnimalFacts;
import dapple.enclosure.PointFacts;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.reading.ReadingView;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One enclosure with what its standing rests on.
 *
 * @param points those in use, in walking order
 * @param latest the newest reading of each quantity at each point that has one, by point
 * @param animals who lives there
 */
public record EnclosureNow(
        Standing standing, List<PointFacts> points, Map<Long, List<ReadingView>> latest, List<AnimalFacts> animals) {

    /**
     * What is asked or was read at each point, in walking order, with its newest reading if there is one.
     *
     * @param lightChange when the light changed last, if it did
     */
    public List<Row> rows(Optional<Instant> lightChange) {
        return points.stream().flatMap(point -> rows(point, lightChange)).toList();
    }

    /** Those by name whom a point serves alone; empty where it serves species, or all. */
    public List<AnimalFacts> servedAlone(PointFacts point) {
        return animals.stream()
                .filter(animal -> point.served().animalIds().contains(animal.id()))
                .toList();
    }

    /** Whether a point is meant for others than those who live there now. */
    public boolean servesNobody(PointFacts point) {
        return !point.served().isAll()
                && animals.stream().noneMatch(animal -> point.serves(animal.speciesId(), animal.id()));
    }

    private Stream<Row> rows(PointFacts point, Optional<Instant> lightChange) {
        List<ReadingView> read = latest.getOrDefault(point.id(), List.of());
        return Stream.concat(point.quantities().stream(), read.stream().map(ReadingView::quantity))
                .distinct()
                .sorted()
                .map(quantity -> new Row(
                        point,
                        quantity,
                        of(read, quantity),
                        isStale(point, quantity) || isFromBefore(lightChange, of(read, quantity)),
                        servesNobody(point)));
    }

    private static boolean isFromBefore(Optional<Instant> lightChange, Optional<ReadingView> view) {
        return view.map(ReadingView::reading)
                .filter(reading -> Unread.ofRig(reading, lightChange)
                        .filter(change -> reading.state().isPresent() && change.silences(reading))
                        .isPresent())
                .isPresent();
    }

    private boolean isStale(PointFacts point, Quantity quantity) {
        return quantity == point.firstQuantity()
                && standing.points().stream()
                        .anyMatch(at -> at.point().id() == point.id() && at.state() == State.STALE);
    }

    private static Optional<ReadingView> of(List<ReadingView> read, Quantity quantity) {
        return read.stream().filter(view -> view.quantity() == quantity).findFirst();
    }

    /**
     * One quantity at one point.
     *
     * @param stale whether its newest reading says nothing of today
     * @param idle whether the point serves nobody who lives there now
     */
    public record Row(PointFacts point, Quantity quantity, Optional<ReadingView> view, boolean stale, boolean idle) {
        /** What it says of today; empty where it was not judged, or serves nobody. */
        public Optional<State> state() {
            return idle ? Optional.empty() : stale ? Optional.of(State.STALE) : view.flatMap(ReadingView::state);
        }
    }
}
