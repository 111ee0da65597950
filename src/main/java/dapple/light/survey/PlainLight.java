package dapple.light.survey;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Scene;
import dapple.light.field.SourcePlaces;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.IntFunction;

/**
 * The largest irradiance on any plane, of some of a scene's quantities and lamps, at any number of places. Zones are made
 * of it.
 */
public final class PlainLight {
    private final Crew crew;
    private final Scene scene;
    private final Field field;
    private double error;

    /**
     * The light of some of a scene's lamps.
     *
     * @param quantities those that are computed; what else the lamps give costs nothing
     */
    public PlainLight(Scene whole, Collection<Lamp> lamps, List<Quantity> quantities, Crew crew) {
        this.crew = crew;
        List<Lamp> reduced = lamps.stream()
                .map(lamp -> only(lamp, quantities))
                .filter(lamp -> !lamp.outputs().isEmpty())
                .toList();
        this.scene = new Scene(whole.accuracy(), reduced, whole.filters(), whole.solids());
        this.field = crew.alone(() -> Field.of(scene));
    }

    private static Lamp only(Lamp lamp, List<Quantity> quantities) {
        return new Lamp(
                lamp.id(),
                lamp.centre(),
                lamp.aim(),
                lamp.source(),
                lamp.outputs().stream()
                        .filter(output -> quantities.contains(output.quantity()))
                        .toList());
    }

    /**
     * The amounts at some places, by quantity, then by place; NaN inside solids and on sources.
     *
     * @param quantities of those that this was made with
     */
    public double[][] at(List<Quantity> quantities, int count, IntFunction<Vec> places) {
        double[][] amounts = new double[quantities.size()][count];
        double[] errors = new double[count];
        crew.each(
                count,
                field::another,
                (own, index) -> errors[index] = store(own, quantities, places.apply(index), amounts, index));
        error = Math.max(error, Arrays.stream(errors).max().orElse(0));
        return amounts;
    }

    private double store(Field own, List<Quantity> quantities, Vec place, double[][] amounts, int index) {
        double[] found = new double[field.quantities().size()];
        Arrays.fill(found, Double.NaN);
        double most = SourcePlaces.isOpen(scene, place) ? own.amounts(place, new Facing.Maximum(), found) : 0;
        boolean isFinite = Double.isFinite(most) && Arrays.stream(found).allMatch(Double::isFinite);
        for (int row = 0; row < amounts.length; row++) {
            int at = field.quantities().indexOf(quantities.get(row));
            amounts[row][index] = isFinite ? (at < 0 ? 0 : found[at]) : Double.NaN;
        }
        return isFinite ? most : 0;
    }

    /** The largest relative error so far. */
    double error() {
        return error;
    }
}
