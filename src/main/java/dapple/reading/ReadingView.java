package dapple.reading;

import dapple.drawing.Gauge;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.order.OrderFacts;
import dapple.target.Target;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

/**
 * A reading as a page shows it: with its point, its meter, and the target that it was judged by.
 *
 * @param newer the newest version of the target of its species, if it was not judged by that
 * @param order the vet's order that stood in place of the target's limits, if there was one
 */
public record ReadingView(
        JudgedReading reading,
        PointFacts point,
        MeterFacts meter,
        Optional<Target> target,
        Optional<Target> newer,
        Optional<OrderFacts> order) {

    /** The gravest state first; what is not judged last. */
    public static final Comparator<ReadingView> GRAVEST_FIRST =
            Comparator.comparingInt(view -> view.state().map(State::ordinal).orElse(State.values().length));

    public Optional<Instant> stateSince() {
        return reading.stateSince();
    }

    public Optional<State> state() {
        return reading.state();
    }

    /** Whether the reading may exceed a ceiling that its sentence does not speak of. */
    public boolean mayExceedBesides() {
        return reading.judgement().mayExceed()
                && (point.role() == PointRole.BASKING || point.role() == PointRole.SHADE);
    }

    public Optional<Limits> limits() {
        Optional<Limits> ofSpecies = target.flatMap(found -> found.limits(reading.quantity()));
        return reading.quantity() == Quantity.UV_INDEX && order.isPresent()
                ? order.map(found -> found.limits(ofSpecies))
                : ofSpecies;
    }

    public Quantity quantity() {
        return reading.quantity();
    }

    /** Beside the limits that count at this point; its axis begins at 0, and without any limit there is nothing to see. */
    public Optional<Gauge> gauge() {
        return limits().filter(limits -> asked().isPresent())
                .filter(limits -> reading.interval().low() >= 0)
                .map(limits -> Gauge.of(limits.at(point.role()), limits.ceiling(), reading.measured()));
    }

    /** The band that counts at this point, where something is asked of it. */
    public Optional<Band> asked() {
        return limits().map(limits -> limits.at(point.role())).filter(band -> !band.isOpen());
    }

    /** The band that counts at this point: a gradient point and the nearest reachable have the ceiling alone. */
    public Band band() {
        return limits().orElseThrow().at(point.role());
    }
}
