package dapple.desk;

import dapple.enclosure.PointFacts;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.prediction.EnclosureScene;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * A place that a form names: a measuring point, or where it was typed.
 *
 * @param pointId empty: the place that was typed
 */
record SpotField(
        @Nullable Long pointId,
        @Nullable BigDecimal x,
        @Nullable BigDecimal y,
        @Nullable BigDecimal z) {
    /** Where light is asked for; else says beside the field why not. */
    Optional<Receiver> receiver(EnclosureScene scene, Errors errors) {
        Optional<Receiver> at = pointId == null ? typed(scene, errors) : point(scene, pointId, errors);
        if (at.isEmpty() && !errors.hasFieldErrors("point")) {
            errors.rejectValue("point", "desk.solve.closed");
        }
        return at.filter(place -> !errors.hasErrors());
    }

    private Optional<Receiver> typed(EnclosureScene scene, Errors errors) {
        if (x == null || y == null || z == null) {
            errors.rejectValue("point", "desk.solve.place");
            return Optional.empty();
        }
        return Optional.of(new Vec(x.doubleValue(), y.doubleValue(), z.doubleValue()))
                .filter(scene.rig()::isOpen)
                .map(place -> new Receiver(place, new Facing.Maximum()));
    }

    private static Optional<Receiver> point(EnclosureScene scene, long id, Errors errors) {
        Optional<PointFacts> point =
                scene.points().stream().filter(one -> one.id() == id).findFirst();
        if (point.isEmpty()) {
            errors.rejectValue("point", "desk.solve.part");
        }
        return point.flatMap(scene.rig()::receiver);
    }
}
