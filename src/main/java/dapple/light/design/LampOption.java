package dapple.light.design;

import dapple.light.quantity.Check;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A lamp that a rig may have.
 *
 * @param poses how it may be turned where it is hung or moved to; none for one that only stays or goes
 * @param powerWatts of the mains, W; empty: not known
 * @param count how many of it there are, 1 to 4; 1 for one that hangs
 * @param closedTo ids of places where it must not be hung, such as too near to what burns
 */
public record LampOption(
        String id, List<Pose> poses, Optional<Double> powerWatts, Origin origin, int count, Set<String> closedTo) {
    /** A lamp that may be hung everywhere. */
    public LampOption(String id, List<Pose> poses, Optional<Double> powerWatts, Origin origin, int count) {
        this(id, poses, powerWatts, origin, count, Set.of());
    }

    public LampOption {
        poses = List.copyOf(poses);
        closedTo = Set.copyOf(closedTo);
        powerWatts.ifPresent(watts -> Check.within("power", watts, 0, 1e6, "W"));
        Check.within("count", count, 1, ProposalTask.MOST_LAMPS, "");
        if (origin instanceof Origin.Hung && count != 1) {
            throw new IllegalArgumentException("a lamp that hangs is one lamp: " + id);
        }
    }

    boolean stays() {
        return origin instanceof Origin.Hung hung && hung.freedom() == Origin.Freedom.STAYS;
    }

    boolean mustHang() {
        return origin instanceof Origin.Hung hung && hung.freedom() != Origin.Freedom.MAY_GO;
    }
}
