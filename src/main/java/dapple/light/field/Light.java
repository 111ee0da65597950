package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What falls on a receiver.
 *
 * @param values by quantity, in its unit
 * @param byLamp the same of each lamp, in the order of the scene
 * @param error estimated largest relative error of the integration, against the larger of the value and 1 % of the
 *     unshaded value
 * @param facing the direction looked in, for each quantity; empty from all round
 */
public record Light(
        Map<Quantity, Double> values,
        List<Map<Quantity, Double>> byLamp,
        double error,
        Optional<Map<Quantity, Vec>> facing) {}
