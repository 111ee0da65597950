package dapple.rig;

import dapple.lamp.LampFacts;
import java.util.Optional;

/** A lamp in an enclosure over its time there. */
public record FittingFacts(
        long id, long enclosureId, LampFacts lamp, Hanging hanging, Optional<CircuitFacts> circuit, Span span) {
    FittingFacts with(Hanging changed) {
        return new FittingFacts(id, enclosureId, lamp, changed, circuit, span);
    }

    FittingFacts with(LampFacts other) {
        return new FittingFacts(id, enclosureId, other, hanging, circuit, span);
    }
}
