package dapple.enclosure;

import dapple.light.judging.PointRole;
import java.util.Optional;

/** A measuring point to add; without a position it is measured, never predicted. */
public record NewPoint(String code, String place, PointRole role, Facing facing, Optional<Position> position) {}
