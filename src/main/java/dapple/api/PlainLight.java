package dapple.api;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/**
 * The largest irradiance on any plane, of some of a scene's quantities and lamps, at any number of places. Zones are made
 * of it.
 */
final class PlainLight {
    private final Engine.Run run;
    private final Scene scene;
    private final Field field;
    private double error;

    /**
     * The light of some of a scene's lamps.
     *
     * @param quantities those that are computed; what else the lamps give costs nothing
     */
    PlainLight(Scene whole, Collection<Lamp> lamps, List<Quantity> quantities, Engine.Run run) {
        this.run = run;
        List<Lamp> reduced = lamps.stream()
                .map(lamp -> only(lamp, quantities))
                .filter(lamp -> !lamp.outputs().isEmpty())
                .toList();
        this.scene = new Scene(whole.accuracy(), reduced, whole.filters(), whole.solids());
        this.field = onOneCore(run, () -> Field.of(scene));
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

    /** Computes something that cannot be shared out, within the deadline. */
    static <T> T onOneCore(Engine.Run run, Supplier<T> work) {
        AtomicReference<T> found = new AtomicReference<>();
        run.onOneCore(() -> found.set(work.get()));
        return Optional.ofNullable(found.get()).orElseThrow();
    }

    /** Does something for each of so many numbers, on all cores. */
    void each(int count, Chunks.Place place) {
        Chunks chunks = new Chunks(count, run.deadline());
        run.onEveryCore(() -> chunks.work(field, place));
    }

    /**
     * The amounts at some places, by quantity, then by place; NaN inside solids and on sources.
     *
     * @param quantities of those that this was made with
     */
    double[][] at(List<Quantity> quantities, int count, IntFunction<Vec> places) {
        double[][] amounts = new double[quantities.size()][count];
        double[] errors = new double[count];
        each(count, (own, index) -> errors[index] = store(own, quantities, places.apply(index), amounts, index));
        error = Math.max(error, Arrays.stream(errors).max().orElse(0));
        return amounts;
    }

    private double store(Field own, List<Quantity> quantities, Vec place, double[][] amounts, int index) {
        for (double[] row : amounts) {
            row[index] = Double.NaN;
        }
        if (!SourcePlaces.isOpen(scene, place)) {
            return 0;
        }
        Light light = own.at(new Receiver(place, new Facing.Maximum()));
        if (!light.values().values().stream().allMatch(Double::isFinite)) {
            return 0;
        }
        for (int row = 0; row < amounts.length; row++) {
            amounts[row][index] = light.values().getOrDefault(quantities.get(row), 0.0);
        }
        return light.error();
    }

    /** The largest relative error so far. */
    double error() {
        return error;
    }
}
