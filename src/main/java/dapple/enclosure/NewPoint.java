package dapple.enclosure;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * A measuring point to add; without a position it is measured, never predicted.
 *
 * @param quantities what is asked there, at least one
 */
public record NewPoint(
        String code,
        String place,
        PointRole role,
        Facing facing,
        Optional<Position> position,
        List<Quantity> quantities) {
    public NewPoint {
        if (quantities.isEmpty()) {
            throw new IllegalArgumentException("a point must ask for at least one quantity");
        }
    }

    /** A point at which the UV index alone is asked. */
    public NewPoint(String code, String place, PointRole role, Facing facing, Optional<Position> position) {
        this(code, place, role, facing, position, List.of(Quantity.UV_INDEX));
    }
}
