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
 * One rig in one line: the gravest state at its basking points, at its shade points and under the ceiling anywhere.
 * Empty: not asked or not known.
 */
public record TargetLine(
        Optional<State> basking, Optional<State> shade, Optional<State> nearest, Power power, boolean isPredicted) {
    static TargetLine of(EnclosureScene scene, LightInside light) {
        List<AtPoint> rows = AtPoint.all(scene, light, Quantity.UV_INDEX);
        return new TargetLine(
                gravest(rows, PointRole.BASKING),
                gravest(rows, PointRole.SHADE),
                gravest(rows, PointRole.NEAREST_REACHABLE),
                Power.of(scene.rig().rig()),
                scene.rig().quantities().contains(Quantity.UV_INDEX));
    }

    private static Optional<State> gravest(List<AtPoint> rows, PointRole role) {
        return rows.stream()
                .filter(row -> row.point().role() == role)
                .flatMap(row -> row.state().stream())
                .min(Comparator.naturalOrder());
    }
}
