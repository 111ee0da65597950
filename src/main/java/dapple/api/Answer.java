package dapple.api;

import dapple.api.Asked.Grid;
import dapple.api.Asked.Named;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.survey.FoundZones;
import java.util.List;
import java.util.Optional;

/**
 * What a document is answered with. Amounts stand in plain arrays, for there may be millions of them.
 *
 * @param quantities in the order of every array of numbers here
 */
record Answer(
        List<Quantity> quantities,
        List<Lamp> lamps,
        List<Named> receivers,
        List<At> lights,
        Optional<OnGrid> grid,
        Optional<FoundZones> zones,
        List<String> warnings) {

    /**
     * What falls on one receiver.
     *
     * @param values of each quantity
     * @param byLamp of each lamp the amounts of all quantities, NaN for those that it does not name
     * @param facing of each quantity; none from all round
     * @param intervals of each quantity; none unless asked for
     */
    record At(Amounts values, List<Amounts> byLamp, double error, List<Vec> facing, List<Interval> intervals) {}

    /**
     * What falls on the places of a grid.
     *
     * @param values by quantity, then by place; NaN where there is no light to speak of, inside solids
     */
    record OnGrid(Grid asked, List<Amounts> values, double error) {}

    /** Some amounts, in a fixed order. */
    static final class Amounts {
        private final double[] amounts;

        Amounts(int count) {
            this.amounts = new double[count];
        }

        int count() {
            return amounts.length;
        }

        double at(int index) {
            return amounts[index];
        }

        void set(int index, double amount) {
            amounts[index] = amount;
        }
    }
}
