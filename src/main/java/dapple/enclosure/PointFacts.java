package dapple.enclosure;

import dapple.light.judging.PointRole;
import java.util.Optional;

/** A measuring point as other features see it. */
public record PointFacts(
        long id,
        long enclosureId,
        String code,
        String place,
        PointRole role,
        Facing facing,
        Optional<Position> position) {}
