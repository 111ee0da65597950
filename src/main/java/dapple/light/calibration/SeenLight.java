package dapple.light.calibration;

import dapple.light.quantity.Check;
import java.util.List;

/**
 * What a rig gives of one quantity at a sensor, as it is stated.
 *
 * @param byLamp in the unit of the quantity, at least 0
 * @param through of each lamp, how much of its light comes through each cover, 0 to 1
 * @param relativeOfPlace standard uncertainty by the place of the sensor, over the light, 0 to 1
 */
public record SeenLight(List<Double> byLamp, List<List<Double>> through, double relativeOfPlace) {
    public SeenLight {
        byLamp = List.copyOf(byLamp);
        through = through.stream().map(List::copyOf).toList();
        byLamp.forEach(light -> Check.notNegative("light", light, ""));
        Check.within("uncertainty by the place", relativeOfPlace, 0, 1, "");
        if (through.size() != byLamp.size()) {
            throw new IllegalArgumentException("every lamp must say what comes through the covers");
        }
    }

    /** All lamps together. */
    public double amount() {
        return byLamp.stream().mapToDouble(light -> light).sum();
    }
}
