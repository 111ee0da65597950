package dapple.light.source;

import dapple.light.geometry.Vec;
import java.util.List;

/**
 * One lamp where it hangs.
 *
 * @param centre the middle of what emits, m
 * @param aim where it points; not used by a bare line or a cylinder
 * @param outputs what it gives; a quantity that it does not name is 0
 */
public record Lamp(String id, Vec centre, Vec aim, Source source, List<Output> outputs) {
    /** Largest cosine between aim and axis that counts as perpendicular. */
    private static final double PERPENDICULAR = 1e-6;

    public Lamp {
        outputs = List.copyOf(outputs);
        aim = aim.unit();
        boolean needsPerpendicularAim = source instanceof Source.Rectangle
                || (source instanceof Source.Line line && line.reflector().isPresent());
        if (needsPerpendicularAim && Math.abs(aim.dot(along(source))) > PERPENDICULAR) {
            throw new IllegalArgumentException("aim must be perpendicular to along");
        }
    }

    private static Vec along(Source source) {
        if (source instanceof Source.Rectangle rectangle) {
            return rectangle.along();
        }
        return source instanceof Source.Line line ? line.along() : Vec.UP;
    }
}
