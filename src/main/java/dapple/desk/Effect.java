package dapple.desk;

import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a change does to the light: at every point, and where an animal comes nearest to it.
 *
 * @param brightest before; empty: not known
 */
public record Effect(
        List<Row> rows,
        TargetLine before,
        TargetLine after,
        Optional<FoundZones.Brightest> brightest,
        Optional<FoundZones.Brightest> brightestAfter) {
    public Effect {
        rows = List.copyOf(rows);
    }

    /** One point and quantity. */
    public record Row(AtPoint before, AtPoint after) {}

    /** A rig with its light. */
    record Lit(EnclosureScene scene, LightInside light) {}

    /**
     * What one rig gives beside another.
     *
     * @param asked listed beside the UV index
     */
    static Effect between(Lit before, Lit after, Set<Quantity> asked) {
        Set<Quantity> quantities = new LinkedHashSet<>(Set.of(Quantity.UV_INDEX));
        quantities.addAll(asked);
        List<Row> rows = new ArrayList<>();
        for (Quantity quantity : quantities) {
            List<AtPoint> one = AtPoint.all(before.scene(), before.light(), quantity);
            List<AtPoint> other = AtPoint.all(after.scene(), after.light(), quantity);
            for (int point = 0; point < one.size(); point++) {
                rows.add(new Row(one.get(point), other.get(point)));
            }
        }
        return new Effect(
                rows,
                TargetLine.of(before.scene(), before.light()),
                TargetLine.of(after.scene(), after.light()),
                brightest(before),
                brightest(after));
    }

    private static Optional<FoundZones.Brightest> brightest(Lit lit) {
        return ZonesShown.of(lit.scene(), lit.light()).flatMap(ZonesShown::brightest);
    }
}
