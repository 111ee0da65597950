package dapple.light.zone;

import dapple.light.geometry.Bounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Looks at a lattice row by row, in any order and from several threads at once: where an animal reaches, and where a
 * solid stands between two neighbours, however thin it is.
 */
public final class Survey {
    private final Lattice lattice;
    private final List<Solid> solids;
    private final Optional<Footing> footing;
    private final Space space;

    /**
     * A survey that is yet to be done.
     *
     * @param footing of a ground dweller; empty for a climber, which reaches every open place
     */
    public Survey(Lattice lattice, List<Solid> solids, Optional<Footing> footing) {
        this.lattice = lattice;
        this.solids = List.copyOf(solids);
        this.footing = footing;
        this.space = Space.unknown(lattice);
    }

    /**
     * Looks at one row along x.
     *
     * @param row 0 to the lattice's rows less one
     * @param open whether the place at an index is air with a known amount of light
     */
    public void row(int row, IntPredicate open) {
        int begin = row * lattice.countX();
        for (int index = begin; index < begin + lattice.countX(); index++) {
            if (open.test(index) && isFooted(lattice.place(index))) {
                space.open(index);
            }
        }
        for (Solid solid : solids) {
            if (mayMeet(solid.bounds(), lattice.place(begin))) {
                part(solid, begin);
            }
        }
    }

    private boolean isFooted(Vec place) {
        return footing.isEmpty() || footing.get().holds(place);
    }

    /** Whether a solid may stand on a way from the row to its neighbours. */
    private boolean mayMeet(Bounds bounds, Vec first) {
        double step = lattice.stepMetres();
        return bounds.least().y() <= first.y() + step
                && bounds.greatest().y() >= first.y()
                && bounds.least().z() <= first.z() + step
                && bounds.greatest().z() >= first.z();
    }

    private void part(Solid solid, int begin) {
        double step = lattice.stepMetres();
        double first = lattice.from().x();
        int low = (int) Math.max(0, Math.floor((solid.bounds().least().x() - first) / step) - 1);
        int high = (int) Math.min(
                lattice.countX() - 1, Math.ceil((solid.bounds().greatest().x() - first) / step));
        for (int x = low; x <= high; x++) {
            if (space.isReachable(begin + x)) {
                part(solid, lattice.place(begin + x), begin + x);
            }
        }
    }

    private void part(Solid solid, Vec place, int index) {
        double step = lattice.stepMetres();
        if (solid.blocks(place, place.plus(new Vec(step, 0, 0)))) {
            space.part(index, 0);
        }
        if (solid.blocks(place, place.plus(new Vec(0, step, 0)))) {
            space.part(index, 1);
        }
        if (solid.blocks(place, place.plus(new Vec(0, 0, step)))) {
            space.part(index, 2);
        }
    }

    /** What was seen, once every row was looked at. */
    public Space space() {
        return space;
    }
}
