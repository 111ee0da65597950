package dapple.api;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.survey.Needs;
import dapple.light.uncertainty.SceneUncertainty;
import dapple.light.zone.Lattice;
import java.util.List;
import java.util.Optional;

/**
 * What one document asks for.
 *
 * @param zones asked of the grid's open points
 * @param uncertainty of the receivers' intervals
 */
record Asked(
        Scene scene,
        List<Named> receivers,
        Optional<Grid> grid,
        Optional<Needs> zones,
        Optional<SceneUncertainty> uncertainty) {

    /** A receiver by its id in the document. */
    record Named(String id, Receiver receiver) {}

    /**
     * A lattice of places, x fastest.
     *
     * @param from its first place
     * @param step between neighbours along each axis, m
     */
    record Grid(Vec from, double step, int countX, int countY, int countZ, Facing facing) {
        int size() {
            return countX * countY * countZ;
        }

        Vec place(int index) {
            return lattice().place(index);
        }

        Lattice lattice() {
            return new Lattice(from, step, countX, countY, countZ);
        }
    }
}
