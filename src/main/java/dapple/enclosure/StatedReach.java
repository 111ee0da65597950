package dapple.enclosure;

import dapple.light.quantity.Check;
import java.util.Optional;

/**
 * How far the animals of an enclosure come, whoever lives there.
 *
 * @param metres above the floor and what stands there; none: everywhere. Who stays on the ground has one, who climbs none
 */
public record StatedReach(ReachKind kind, Optional<Double> metres) {
    private static final double LEAST = 0.01;
    private static final double MOST = 20;

    public StatedReach {
        metres.ifPresent(reach -> Check.within("reach", reach, LEAST, MOST, "m"));
        if (!fits(kind, metres.isPresent())) {
            throw new IllegalArgumentException("who stays on the ground has a reach in metres, who climbs none");
        }
    }

    static boolean fits(ReachKind kind, boolean hasMetres) {
        return switch (kind) {
            case GROUND -> hasMetres;
            case JUMPS -> true;
            case CLIMBS -> !hasMetres;
        };
    }
}
