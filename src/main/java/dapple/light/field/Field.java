package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The light of a scene, asked for place by place. Not for two threads at once: each makes its own with
 * {@link #another()}; the result does not depend on which one answers.
 */
public final class Field {
    private final Scene scene;
    private final List<LampField> lamps;
    private final List<Quantity> quantities;
    private final List<LampLight> lights;
    private final Brightest brightest;
    private final Sums sums;

    /** What each lamp may err by, as a share of the whole; 0 to look at each for itself. */
    private double part;

    private Field(Scene scene, List<LampField> lamps) {
        this.scene = scene;
        this.lamps = lamps;
        Set<Quantity> named = EnumSet.noneOf(Quantity.class);
        scene.lamps().forEach(lamp -> lamp.outputs().forEach(output -> named.add(output.quantity())));
        this.quantities = List.copyOf(named);
        this.lights = lamps.stream()
                .map(lamp -> new LampLight(lamp, lamp.unit(scene.solids(), scene.filters()), quantities))
                .toList();
        this.brightest = new Brightest(lights, scene.accuracy());
        this.sums = new Sums(quantities.size(), lamps.size());
    }

    public static Field of(Scene scene) {
        return new Field(
                scene,
                scene.lamps().stream()
                        .map(lamp -> new LampField(lamp, scene.filters(), scene.solids()))
                        .toList());
    }

    public Field another() {
        return new Field(scene, lamps);
    }

    public Scene scene() {
        return scene;
    }

    /** All quantities that any lamp names, in the order of their kind. */
    public List<Quantity> quantities() {
        return quantities;
    }

    /** What falls on a receiver. */
    public Light at(Receiver receiver) {
        part = 0;
        look(receiver.place(), receiver.facing());
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        List<Map<Quantity, Double>> byLamp = new ArrayList<>();
        for (int index = 0; index < lights.size(); index++) {
            byLamp.add(byQuantity(index));
        }
        for (int row = 0; row < quantities.size(); row++) {
            values.put(quantities.get(row), sums.values[row]);
        }
        boolean isRound = receiver.facing() instanceof Facing.AllRound;
        return new Light(values, byLamp, sums.error, isRound ? Optional.empty() : Optional.of(directions()));
    }

    /**
     * What falls on a receiver, for many of them. The accuracy is kept by the sum: lamps that give less are known less
     * closely, and what together is below a tenth of it is left out.
     *
     * @param amounts receives the amount of each of {@link #quantities()}
     * @return the estimated largest relative error, as {@link Light#error()}
     */
    public double amounts(Vec place, Facing facing, double[] amounts) {
        part = 1.0 / lights.size();
        look(place, facing);
        System.arraycopy(sums.values, 0, amounts, 0, quantities.size());
        return sums.error;
    }

    private Map<Quantity, Double> byQuantity(int lamp) {
        Map<Quantity, Double> amounts = new EnumMap<>(Quantity.class);
        for (int row = 0; row < quantities.size(); row++) {
            if (lights.get(lamp).names(row)) {
                amounts.put(quantities.get(row), sums.byLamp[lamp][row]);
            }
        }
        return amounts;
    }

    private Map<Quantity, Vec> directions() {
        Map<Quantity, Vec> directions = new EnumMap<>(Quantity.class);
        for (int row = 0; row < quantities.size(); row++) {
            directions.put(quantities.get(row), sums.directions[row]);
        }
        return directions;
    }

    private void look(Vec place, Facing facing) {
        if (facing instanceof Facing.AllRound) {
            lookAs(View.ROUND, place);
        } else if (facing instanceof Facing.Direction direction) {
            lookAs(View.facing(direction.normal()), place);
        } else if (facing instanceof Facing.TowardsLamp towards) {
            lookAs(View.facing(lamp(towards.id()).minus(place).unit()), place);
        } else {
            lookBrightest(place);
        }
    }

    private Vec lamp(String id) {
        return scene.lamps().stream()
                .filter(lamp -> lamp.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no lamp " + id))
                .centre();
    }

    private void lookAs(View view, Vec place) {
        sums.begin();
        for (LampLight lamp : lights) {
            lamp.judge(place, part, scene.accuracy(), sums.most);
            lamp.look(place, view, scene.accuracy());
            lamp.raise(sums.most, view, false);
        }
        for (int row = 0; row < quantities.size(); row++) {
            sum(row, view, false, false);
        }
    }

    /** The plane that has most of each quantity; if all lamps lie in front of it, their vectors tell what it has. */
    private void lookBrightest(Vec place) {
        sums.begin();
        for (LampLight lamp : lights) {
            lamp.judge(place, part, scene.accuracy(), sums.most);
            lamp.lookAsVectors(place, scene.accuracy());
            lamp.raise(sums.most, View.VECTOR, true);
        }
        for (int row = 0; row < quantities.size(); row++) {
            Brightest.Best best = brightest.facing(place, row);
            View view = View.facing(best.facing());
            if (!best.isWhole()) {
                look(row, place, view);
            }
            sum(row, view, true, best.isWhole());
        }
    }

    private void look(int row, Vec place, View view) {
        for (LampLight lamp : lights) {
            if (lamp.names(row)) {
                lamp.look(row, place, view, scene.accuracy());
            }
        }
    }

    /** Sums what the lamps show of a quantity. */
    private void sum(int row, View view, boolean isBest, boolean ofVectors) {
        LampLight.Sum sum = new LampLight.Sum();
        double value = 0;
        for (int index = 0; index < lights.size(); index++) {
            LampLight lamp = lights.get(index);
            if (lamp.names(row)) {
                double amount = lamp.amount(row, view, ofVectors);
                sums.byLamp[index][row] = amount;
                value += amount;
                if (ofVectors) {
                    lamp.addVector(row, sum);
                } else {
                    lamp.add(row, sum);
                }
            }
        }
        if (isBest && !ofVectors) {
            sum.error += value * Brightest.OFF_BEST * scene.accuracy();
        }
        sums.put(row, value, view.facing(), sum);
    }

    /** The sums of the last place. */
    private static final class Sums {
        private final double[] values;
        private final double[][] byLamp;
        private final double[] most;
        private final Vec[] directions;
        private double error;

        Sums(int quantities, int lamps) {
            values = new double[quantities];
            byLamp = new double[lamps][quantities];
            most = new double[quantities];
            directions = new Vec[quantities];
        }

        void begin() {
            error = 0;
            Arrays.fill(most, 0);
        }

        void put(int row, double value, Vec direction, LampLight.Sum sum) {
            values[row] = value;
            directions[row] = direction;
            double measure = Math.max(Math.max(value, sum.floor), Double.MIN_NORMAL);
            error = Math.max(error, sum.error == 0 ? 0 : sum.error / measure);
        }
    }
}
