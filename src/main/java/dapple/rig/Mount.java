package dapple.rig;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Check;
import java.util.Optional;

/**
 * Where a lamp is and which way it points, in the enclosure's coordinates.
 *
 * @param centre the middle of what emits, m; may lie outside, above or beside
 * @param aim where it points, of length 1
 * @param along the direction of its length, of length 1 and square to the aim: what is given is turned so, as a tube that
 *     leans lengthwise does; empty for a lamp without length
 */
public record Mount(Vec centre, Vec aim, Optional<Vec> along) {
    private static final double LEAST = -9.99;
    private static final double MOST = 99.99;

    /** The sine of the angle below which two directions count as the same. */
    private static final double PARALLEL = 1e-3;

    public Mount {
        Check.within("x", centre.x(), LEAST, MOST, "m");
        Check.within("y", centre.y(), LEAST, MOST, "m");
        Check.within("z", centre.z(), LEAST, MOST, "m");
        Vec unit = aim.unit();
        if (along.filter(length -> isParallel(unit, length)).isPresent()) {
            throw new IllegalArgumentException("a lamp must not point along its length");
        }
        along = along.map(length -> square(length.unit(), unit));
        aim = unit;
    }

    /** Whether a lamp would point along its own length. */
    public static boolean isParallel(Vec aim, Vec along) {
        return !(aim.unit().cross(along.unit()).length() > PARALLEL);
    }

    private static Vec square(Vec along, Vec aim) {
        return along.minus(aim.times(along.dot(aim))).unit();
    }
}
