package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;

/** One lamp of emission 1 in the origin, aimed down. */
final class Alone {
    private static final Vec ORIGIN = new Vec(0, 0, 0);
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final double ACCURACY = 1e-6;

    private Alone() {}

    /** What it gives on a plane. */
    static double light(Source source, Vec place, Vec facing) {
        return light(source, ORIGIN, List.of(), new Receiver(place, new Facing.Direction(facing)));
    }

    /** What it gives on a plane when its middle is moved. */
    static double light(Source source, Vec centre, Vec place, Vec facing) {
        return light(source, centre, List.of(), new Receiver(place, new Facing.Direction(facing)));
    }

    /** What it gives through a filter on a plane that faces it. */
    static double lightThrough(Filter filter, Source source, Vec place) {
        return light(source, ORIGIN, List.of(filter), new Receiver(place, new Facing.TowardsLamp("lamp")));
    }

    private static double light(Source source, Vec centre, List<Filter> filters, Receiver receiver) {
        Lamp lamp = new Lamp("lamp", centre, DOWN, source, List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
        return Field.of(new Scene(ACCURACY, List.of(lamp), filters, List.of()))
                .at(receiver)
                .values()
                .getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }
}
