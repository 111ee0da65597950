package dapple.light.zone;

import dapple.light.geometry.Vec;
import java.util.BitSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Where an animal can go: from neighbour to neighbour along x, y and z, where nothing stands between them. */
public final class Ways {
    private static final double ROUNDING = 1e-9;

    private final ZoneMap map;
    private final Space space;
    private final Lattice lattice;

    public Ways(ZoneMap map) {
        this.map = map;
        this.space = map.space();
        this.lattice = space.lattice();
    }

    /**
     * Whether a way leads from a patch, over reachable places of which none is over the ceiling, to shade in which the
     * body has room: a level disc of its length.
     */
    public boolean leadOut(BaskingPatch patch, Body body) {
        BitSet room = room(body);
        BitSet starts = beside(patch.spot());
        BitSet over = map.in(Zone.OVER_CEILING);
        return !room.isEmpty() && lead(starts, index -> space.isReachable(index) && !over.get(index), room::get);
    }

    /** Whether any reachable place of the lattice lies beside a patch. */
    public boolean areBeside(BaskingPatch patch) {
        return !beside(patch.spot()).isEmpty();
    }

    /** Whether a way leads from the brightest place of a surface to any reachable shade, whatever lies on it. */
    public boolean leadFrom(SurfaceLight.Brightest brightest) {
        return leadToShade(beside(brightest.lattice(), IntStream.of(brightest.index())));
    }

    /** Whether a way leads from the brightest reachable place to any reachable shade, whatever lies on it. */
    public boolean leadFromBrightest() {
        BitSet start = new BitSet();
        map.brightest().ifPresent(start::set);
        return leadToShade(start);
    }

    private boolean leadToShade(BitSet starts) {
        return lead(starts, space::isReachable, map.in(Zone.SHADE)::get);
    }

    private BitSet beside(Spot spot) {
        return beside(spot.lattice(), spot.places().stream());
    }

    /** The reachable corners of the cells that hold some places of a surface, on its own side. */
    private BitSet beside(SurfaceLattice surface, IntStream places) {
        BitSet found = new BitSet();
        places.forEach(place -> addCorners(surface, surface.place(place), found));
        return found;
    }

    private void addCorners(SurfaceLattice surface, Vec place, BitSet found) {
        int x = cell(place.x() - lattice.from().x());
        int y = cell(place.y() - lattice.from().y());
        int z = cell(place.z() - lattice.from().z());
        for (int corner = 0; corner < 8; corner++) {
            int cornerX = x + (corner & 1);
            int cornerY = y + ((corner >> 1) & 1);
            int cornerZ = z + (corner >> 2);
            if (lattice.has(cornerX, cornerY, cornerZ)) {
                int index = lattice.index(cornerX, cornerY, cornerZ);
                if (space.isReachable(index) && surface.surface().isBefore(lattice.place(index))) {
                    found.set(index);
                }
            }
        }
    }

    private int cell(double way) {
        return (int) Math.floor(way / lattice.stepMetres());
    }

    /** The places in shade around which a level disc has room for the body. */
    private BitSet room(Body body) {
        int layer = lattice.countX() * lattice.countY();
        Sheet sheet = new Sheet(lattice.countX(), lattice.countY(), lattice.stepMetres(), lattice.stepMetres());
        BitSet room = new BitSet();
        BitSet shade = map.in(Zone.SHADE);
        for (int z = 0; z < lattice.countZ(); z++) {
            int first = z * layer;
            double[] clearances = Clearance.of(sheet, at -> shade.get(first + at), at -> isBesideAWall(first + at));
            for (int at = 0; at < layer; at++) {
                if (clearances[at] >= body.radiusMetres() * (1 - ROUNDING)) {
                    room.set(first + at);
                }
            }
        }
        return room;
    }

    private boolean isBesideAWall(int index) {
        return space.isParted(index, 0)
                || space.isParted(index, 1)
                || (lattice.x(index) > 0 && space.isParted(index - 1, 0))
                || (lattice.y(index) > 0 && space.isParted(index - lattice.countX(), 1));
    }

    private boolean lead(BitSet starts, IntPredicate may, IntPredicate goal) {
        Flood flood = new Flood(may);
        starts.stream().forEach(flood::take);
        return flood.reaches(goal);
    }

    /** Spreads from neighbour to neighbour, breadth first. */
    private final class Flood {
        private final int[] strides = {1, lattice.countX(), lattice.countX() * lattice.countY()};
        private final int[] counts = {lattice.countX(), lattice.countY(), lattice.countZ()};
        private final IntPredicate may;
        private final BitSet seen = new BitSet(lattice.size());
        private final int[] queue = new int[lattice.size()];
        private int end;

        Flood(IntPredicate may) {
            this.may = may;
        }

        void take(int index) {
            if (!seen.get(index) && may.test(index)) {
                seen.set(index);
                queue[end++] = index;
            }
        }

        boolean reaches(IntPredicate goal) {
            for (int next = 0; next < end; next++) {
                int at = queue[next];
                if (goal.test(at)) {
                    return true;
                }
                for (int axis = 0; axis < strides.length; axis++) {
                    spread(at, axis);
                }
            }
            return false;
        }

        private void spread(int at, int axis) {
            int stride = strides[axis];
            int coordinate = at / stride % counts[axis];
            if (coordinate > 0 && !space.isParted(at - stride, axis)) {
                take(at - stride);
            }
            if (coordinate < counts[axis] - 1 && !space.isParted(at, axis)) {
                take(at + stride);
            }
        }
    }
}
