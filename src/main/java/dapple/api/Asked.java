package dapple.api;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.uncertainty.SceneUncertainty;
import dapple.light.zone.Body;
import dapple.light.zone.Lattice;
import dapple.light.zone.RestingSurface;
import dapple.light.zone.ZoneTarget;
import java.util.List;
import java.util.Map;
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
        Optional<Zones> zones,
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

    /**
     * What an animal finds in one quantity.
     *
     * @param surfaces that it rests on
     * @param reachMetres of a ground dweller; empty for a climber
     * @param also further quantities that a basking place must have, with their targets
     * @param overlap the share above which two lamps' patches overlap; empty if that is not asked
     */
    record Zones(
            Quantity quantity,
            ZoneTarget target,
            Body body,
            List<RestingSurface> surfaces,
            Optional<Double> reachMetres,
            Map<Quantity, Interval> also,
            Optional<Double> overlap) {}
}
