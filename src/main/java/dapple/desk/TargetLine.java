package dapple.desk;

import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One rig in one line: the gravest state at its basking points, at its shade points, and under the ceiling where an animal can be.
 * Empty: not asked or not known.
 */
public record TargetLine(
        Optional<State> basking, Optional<State> shade, Optional<State> ceiling, Power power, boolean isPredicted) {
    static TargetLine of(EnclosureScene scene, LightInside light) {
        List<AtPoint> rows = AtPoint.all(scene, light, Quantity.UV_INDEX);
        return new TargetLine(
                gravest(rows, PointRole.BASKING),
                gravest(rows, PointRole.SHADE),
                ceiling(ZonesShown.of(scene, light), rows),
                Power.of(scene.rig().rig()),
                scene.rig().quantities().contains(Quantity.UV_INDEX));
    }

    /** A ceiling is reached by the brightest place in reach, and by any point. */
    private static Optional<State> ceiling(Optional<ZonesShown> zones, List<AtPoint> rows) {
        boolean isReached = zones.flatMap(ZonesShown::ceilingReached).isPresent()
                || rows.stream().anyMatch(row -> row.state().equals(Optional.of(State.OVER_CEILING)));
        if (isReached) {
            return Optional.of(State.OVER_CEILING);
        }
        Optional<State> atPoints = gravest(rows, PointRole.NEAREST_REACHABLE);
        return atPoints.isPresent()
                ? atPoints
                : zones.flatMap(ZonesShown::brightest).map(found -> State.ON_TARGET);
    }

    private static Optional<State> gravest(List<AtPoint> rows, PointRole role) {
        return rows.stream()
                .filter(row -> row.point().role() == role)
                .flatMap(row -> row.state().stream())
                .min(Comparator.naturalOrder());
    }
}
