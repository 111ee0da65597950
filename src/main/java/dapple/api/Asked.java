package dapple.api;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * What one document asks for.
 *
 * @param zones asked of the grid's open points
 * @param uncertainty of the answer's intervals
 */
record Asked(
        Scene scene,
        List<Named> receivers,
        Optional<Grid> grid,
        Optional<Zones> zones,
        Optional<Uncertainty> uncertainty) {

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
            int x = index % countX;
            int y = index / countX % countY;
            int z = index / countX / countY;
            return new Vec(from.x() + x * step, from.y() + y * step, from.z() + z * step);
        }
    }

    /** Shares of the space by what an animal finds there: limits in the quantity's unit, length in metres. */
    record Zones(
            Quantity quantity,
            Interval basking,
            Interval shade,
            double ceiling,
            double bodyLengthMetres,
            Optional<Surface> surface) {}

    /** The plane that basking patches are looked for on. */
    record Surface(Vec point, Vec normal, Filter.Rectangle within) {}

    /** Standard uncertainties: of readings and meters relative, of positions in metres. */
    record Uncertainty(double reading, double meter, double positionMetres) {}
}
