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
    private static final List<Vec> WAYS = List.of(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1));

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
        double step = lattice.stepMetres();
        Vec last = lattice.place(begin + lattice.countX() - 1);
        List<Solid> near =
                Touch.meeting(solids, Bounds.around(lattice.place(begin), last.plus(new Vec(step, step, step))));
        for (int index = begin; index < begin + lattice.countX(); index++) {
            if (open.test(index)) {
                look(index, near);
            }
        }
    }

    private void look(int index, List<Solid> near) {
        double step = lattice.stepMetres();
        Vec place = lattice.place(index);
        List<Solid> here = Touch.meeting(near, Bounds.around(place, place.plus(new Vec(step, step, step))));
        if (!Touch.isFree(place, here) || !isFooted(place)) {
            return;
        }
        space.open(index);
        for (int axis = 0; axis < WAYS.size(); axis++) {
            if (Touch.parts(place, WAYS.get(axis).times(step), here)) {
                space.part(index, axis);
            }
        }
    }

    private boolean isFooted(Vec place) {
        return footing.isEmpty() || footing.get().holds(place);
    }

    /** What was seen, once every row was looked at. */
    public Space space() {
        return space;
    }
}
