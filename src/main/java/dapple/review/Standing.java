package dapple.review;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.reading.ReadingView;
import dapple.site.Settings;
import dapple.species.SpeciesFacts;
import dapple.species.UvZone;
import dapple.target.Target;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How one enclosure stands at an instant.
 *
 * @param points what was found at each of its points, the gravest first; empty where nothing is judged: no occupant,
 *     or planned off
 * @param plannedOff the time in which its lamps are off on purpose, if it is now
 * @param isBeingJudged whether what was read there is being judged anew, because a fact came late
 */
public record Standing(
        EnclosureFacts enclosure,
        List<SpeciesFacts> species,
        List<AtPoint> points,
        Optional<PlannedOffTime> plannedOff,
        boolean isBeingJudged) {

    /** The state of the enclosure; none if nobody lives there. */
    public Optional<State> state() {
        if (species.isEmpty()) {
            return Optional.empty();
        }
        if (plannedOff.isPresent()) {
            return Optional.of(State.PLANNED_OFF);
        }
        return points.isEmpty()
                ? Optional.of(State.STALE)
                : Optional.of(points.get(0).state());
    }

    /** The point that decides the state. */
    public Optional<AtPoint> deciding() {
        return points.stream().findFirst();
    }

    /** Other points that are not on target. */
    public List<AtPoint> also() {
        return points.stream()
                .skip(1)
                .filter(point -> point.state() != State.ON_TARGET)
                .toList();
    }

    /** Whether any of its points may exceed the ceiling. */
    public boolean mayExceed() {
        return points.stream().anyMatch(AtPoint::mayExceed);
    }

    /** Whether something was read there that no target judges. */
    boolean lacksATarget() {
        return points.stream().anyMatch(point -> point.state() == State.NO_TARGET);
    }

    /** Whether a point that is judged by a vet's order is off it. */
    boolean breaksAnOrder() {
        return points.stream()
                .anyMatch(point -> point.isOrdered() && point.state().isGraverThan(State.STALE));
    }

    /** Whether a rig that is so since an instant has not been read at all of its points. */
    public boolean isUnreadSince(Instant change) {
        return !species.isEmpty()
                && plannedOff.isEmpty()
                && readSince().filter(since -> !since.isBefore(change)).isEmpty();
    }

    /** The points of which nothing has been read since a rig is so, in the order of the walk. */
    public List<PointFacts> pointsUnreadSince(Instant change) {
        return points.stream()
                .filter(at -> at.quantity() == at.point().firstQuantity())
                .filter(at ->
                        at.takenAt().filter(taken -> !taken.isBefore(change)).isEmpty())
                .map(AtPoint::point)
                .distinct()
                .sorted(Comparator.comparing(PointFacts::id))
                .toList();
    }

    /** Since what it is still to be read, where that decides its state. */
    public Optional<Unread> unread() {
        return deciding().flatMap(AtPoint::unread);
    }

    /** Whether it is still to be read under a vet's order. */
    boolean isUnderUnreadOrder() {
        return unread().filter(unread -> unread.why() == Unread.Why.ORDER).isPresent();
    }

    /** Whether its next reading is due; it is at once when what is needed changes. */
    public boolean isOverdue(Settings settings, Instant now) {
        return unread().isPresent()
                || readSince()
                        .map(since -> since.plus(settings.overdueAfter()).isBefore(now))
                        .orElse(true);
    }

    public boolean needsSomebody() {
        return state().filter(state -> state != State.ON_TARGET && state != State.PLANNED_OFF)
                .isPresent();
    }

    /** The oldest of the newest readings of what each point is read for first; none if a point was never read. */
    public Optional<Instant> readSince() {
        if (points.isEmpty() || points.stream().anyMatch(point -> point.view().isEmpty())) {
            return Optional.empty();
        }
        return points.stream()
                .filter(point -> point.quantity() == point.point().firstQuantity())
                .flatMap(point -> point.view().stream())
                .map(view -> view.reading().takenAt())
                .min(Instant::compareTo);
    }

    /**
     * What was found at one point.
     *
     * @param view its newest reading, if it has one
     * @param unread what has changed since it was read
     */
    public record AtPoint(PointFacts point, State state, Optional<ReadingView> view, Optional<Unread> unread) {
        /** What was read, or is to be. */
        public Quantity quantity() {
            return view.map(ReadingView::quantity).orElse(point.firstQuantity());
        }

        boolean mayExceed() {
            return view.filter(found -> found.reading().judgement().mayExceed()).isPresent();
        }

        /** How many times its ceiling was read at a point that is over it; 0 at any other. */
        double overCeiling() {
            return view.filter(found -> state == State.OVER_CEILING)
                    .flatMap(found ->
                            found.limits().map(limits -> found.reading().amount() / limits.ceiling()))
                    .orElse(0.0);
        }

        /** Whether it is judged by a vet's order. */
        boolean isOrdered() {
            return view.flatMap(found -> found.reading().orderId()).isPresent();
        }

        /** The zone of the target that the reading was judged by. */
        Optional<UvZone> zone() {
            return view.flatMap(ReadingView::target).map(Target::zone);
        }

        Optional<Instant> takenAt() {
            return view.map(found -> found.reading().takenAt());
        }

        /** Since when the point is in this state; a stale one since it was last read, or since what is needed changed. */
        public Optional<Instant> since() {
            if (unread.isPresent()) {
                return unread.map(Unread::since);
            }
            return state == State.STALE
                    ? view.map(found -> found.reading().takenAt())
                    : view.flatMap(ReadingView::stateSince);
        }
    }
}
