package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.light.metrology.RepeatsTaken;
import dapple.light.metrology.RepeatsTaken.Next;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.SignedIn;
import dapple.prediction.LimitsInForce;
import java.time.Clock;
import java.time.Instant;
import org.springframework.stereotype.Component;

/** Whether three readings are asked for at a point, and whether those that were typed are enough. */
@Component
class Repeating {
    private final Enclosures enclosures;
    private final Meters meters;
    private final LimitsInForce limits;
    private final Clock clock;

    Repeating(Enclosures enclosures, Meters meters, LimitsInForce limits, Clock clock) {
        this.enclosures = enclosures;
        this.meters = meters;
        this.limits = limits;
        this.clock = clock;
    }

    boolean asksAt(SignedIn me, PointFacts point, Quantity quantity) {
        return me.settings().repeatsAsked().at(point.role(), quantity);
    }

    boolean asksAt(SignedIn me, long pointId, Quantity quantity) {
        return asksAt(me, enclosures.point(me.siteId(), pointId), quantity);
    }

    /** An amount over the ceiling stops the walk at once: nobody stays there for another. */
    Progress progress(SignedIn me, long pointId, long meterId, RepeatsTaken taken) {
        MeterFacts meter = meters.get(me.siteId(), meterId);
        if (isOver(me, enclosures.point(me.siteId(), pointId), meter, taken.last())) {
            return new Progress(Next.ENOUGH, taken.last());
        }
        return new Progress(taken.next(meter.uncertainty().resolution()), taken.amount());
    }

    private boolean isOver(SignedIn me, PointFacts point, MeterFacts meter, double displayed) {
        Instant now = clock.instant();
        double amount = meters.calibrationAt(meter.id(), now)
                        .map(inForce -> inForce.factorAt(displayed))
                        .orElse(1.0)
                * displayed;
        return limits.at(me.siteId(), point.enclosureId(), now)
                .ceiling(meter.quantity(), point)
                .filter(ceiling -> amount >= ceiling)
                .isPresent();
    }

    /**
     * What is asked for next.
     *
     * @param amount what is stored as the reading if this is enough
     */
    record Progress(Next next, double amount) {}
}
