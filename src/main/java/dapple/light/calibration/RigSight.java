package dapple.light.calibration;

import dapple.light.cover.Filter;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Looks at a rig from the places of its readings. How much of a lamp's light comes through a cover follows from a thin
 * veil in its plane: what passes the veil T times, T = 0.9, is share · T + (1 − share) of it.
 */
public final class RigSight {
    private static final double VEIL = 0.9;

    private final Scene scene;
    private final Quantity quantity;
    private final double positionMetres;
    private final Field field;
    private final List<Field> veiled;

    /**
     * A look at one quantity.
     *
     * @param positionMetres standard uncertainty of each coordinate of a sensor, m
     */
    public RigSight(Scene scene, Quantity quantity, double positionMetres) {
        this.scene = scene;
        this.quantity = quantity;
        this.positionMetres = positionMetres;
        this.field = Field.of(scene);
        this.veiled = scene.filters().stream()
                .map(filter -> Field.of(veiled(scene, filter, quantity)))
                .toList();
    }

    private static Scene veiled(Scene scene, Filter filter, Quantity quantity) {
        List<Filter> filters = new ArrayList<>(scene.filters());
        filters.add(new Filter.Measured(filter.plane(), Map.of(quantity, VEIL), 1));
        return new Scene(scene.accuracy(), scene.lamps(), filters, scene.solids());
    }

    /** What falls on a sensor. */
    public SeenLight at(Receiver sensor) {
        Light light = field.at(sensor);
        List<Double> byLamp = byLamp(light);
        Receiver turned = new Receiver(sensor.place(), facing(light));
        List<List<Double>> behind =
                veiled.stream().map(veil -> byLamp(veil.at(turned))).toList();
        List<List<Double>> through = IntStream.range(0, byLamp.size())
                .mapToObj(lamp -> behind.stream()
                        .map(row -> share(row.get(lamp), byLamp.get(lamp)))
                        .toList())
                .toList();
        return new SeenLight(byLamp, through, relativeOfPlace(sensor, sum(byLamp)));
    }

    private Facing facing(Light light) {
        return light.facing()
                .<Facing>map(ways -> new Facing.Direction(ways.getOrDefault(quantity, Vec.UP)))
                .orElse(new Facing.AllRound());
    }

    private static double share(double behind, double open) {
        return open > 0 ? Math.max(0, Math.min(1, (1 - behind / open) / (1 - VEIL))) : 0;
    }

    private List<Double> byLamp(Light light) {
        return light.byLamp().stream()
                .map(lamp -> lamp.getOrDefault(quantity, 0.0))
                .toList();
    }

    private static double sum(List<Double> byLamp) {
        return byLamp.stream().mapToDouble(light -> light).sum();
    }

    /** √Σ ((E(x + u) − E(x − u))/2)² over the axes, over E; not more than the whole. */
    private double relativeOfPlace(Receiver sensor, double amount) {
        if (!(amount > 0)) {
            return 0;
        }
        double squares = 0;
        for (Vec axis : List.of(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1))) {
            Vec step = axis.times(positionMetres);
            double half = (amount(sensor, step, amount) - amount(sensor, step.times(-1), amount)) / 2;
            squares += half * half;
        }
        return Math.min(1, Math.sqrt(squares) / amount);
    }

    /** Where the sensor cannot be, the light of its place. */
    private double amount(Receiver sensor, Vec step, double here) {
        Vec place = sensor.place().plus(step);
        if (scene.solidAround(place) >= 0) {
            return here;
        }
        double amount = sum(byLamp(field.at(new Receiver(place, sensor.facing()))));
        return Double.isFinite(amount) ? amount : here;
    }
}
