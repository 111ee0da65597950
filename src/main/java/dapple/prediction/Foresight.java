package dapple.prediction;

import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.prediction.Foreseen.Excess;
import dapple.prediction.Foreseen.Highest;
import dapple.prediction.Foreseen.Row;
import dapple.rig.Rig;
import dapple.rig.RigScene;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Compares the light of two rigs at the points of an enclosure. */
final class Foresight {
    private final PointLimits limits;
    private final RigScene after;
    private final PredictedLight lightNow;
    private final PredictedLight lightThen;
    private final Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);

    private Foresight(RigScene before, RigScene after, PointLimits limits) {
        this.after = after;
        this.limits = limits;
        this.lightNow = PredictedLight.of(before);
        this.lightThen = PredictedLight.of(after);
        quantities.addAll(before.quantities());
        quantities.addAll(after.quantities());
    }

    static Foreseen compare(Rig now, Rig then, List<PointFacts> points, PointLimits limits) {
        return new Foresight(RigScene.of(now), RigScene.of(then), limits).at(points);
    }

    private Foreseen at(List<PointFacts> points) {
        List<Row> rows = new ArrayList<>();
        List<PointFacts> unplaced = new ArrayList<>();
        for (PointFacts point : points) {
            List<Row> found = rows(point);
            rows.addAll(found);
            if (found.isEmpty()) {
                unplaced.add(point);
            }
        }
        return new Foreseen(rows, highest(rows), excesses(rows), after.leftOut(), unplaced);
    }

    private List<Row> rows(PointFacts point) {
        Map<Quantity, Predicted> now = lightNow.at(point);
        Map<Quantity, Predicted> then = lightThen.at(point);
        return quantities.stream()
                .map(quantity -> new Row(
                        point,
                        quantity,
                        Optional.ofNullable(now.get(quantity)),
                        Optional.ofNullable(then.get(quantity)),
                        limits.of(quantity, point)))
                .filter(row -> row.now().isPresent() || row.then().isPresent())
                .toList();
    }

    private List<Highest> highest(List<Row> rows) {
        return quantities.stream()
                .flatMap(quantity -> rows.stream()
                        .filter(row -> row.quantity() == quantity)
                        .filter(row -> row.point().role() == PointRole.NEAREST_REACHABLE)
                        .flatMap(row ->
                                row.then().map(predicted -> new Highest(row.point(), quantity, predicted)).stream())
                        .max(Comparator.comparingDouble(
                                highest -> highest.predicted().amount()))
                        .stream())
                .toList();
    }

    private static List<Excess> excesses(List<Row> rows) {
        return rows.stream()
                .filter(row -> row.point().role() != PointRole.KEEPER)
                .flatMap(row -> row.limits().stream().flatMap(limit -> excess(row, limit).stream()))
                .toList();
    }

    private static Optional<Excess> excess(Row row, PointLimits.OfSpecies limit) {
        double ceiling = limit.limits().ceiling();
        return row.then()
                .filter(then -> then.interval().high() >= ceiling)
                .map(then -> new Excess(row.point(), then, limit, then.amount() >= ceiling));
    }
}
