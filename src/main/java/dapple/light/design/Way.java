package dapple.light.design;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.quantity.Quantity;
import java.util.List;

/**
 * The way from the sunniest place to the shadiest, along which the light should fall in even steps.
 *
 * @param receivers the sunniest first, three or more
 */
public record Way(Quantity quantity, List<Receiver> receivers) {
    /** What is said where the light does not fall from the first place to the last. */
    public static final double NO_FALL = 1e6;

    public Way {
        receivers = List.copyOf(receivers);
        if (receivers.size() < 3 || receivers.stream().anyMatch(at -> at.facing() instanceof Facing.TowardsLamp)) {
            throw new IllegalArgumentException("a way has three receivers or more, none facing a lamp");
        }
    }

    /**
     * How uneven the fall is: with n steps and s the largest change between neighbours over the whole fall, up or down,
     * (s − 1/n)/(1 − 1/n): 0 if all steps are alike, 1 if the light falls in one of them, more if it also rises.
     *
     * @param amounts along the way
     */
    static double unevenness(double[] amounts, int from, int count) {
        double fall = amounts[from] - amounts[from + count - 1];
        double largest = 0;
        for (int place = from + 1; place < from + count; place++) {
            largest = Math.max(largest, Math.abs(amounts[place] - amounts[place - 1]));
        }
        double even = 1.0 / (count - 1);
        return fall > 0 ? Math.min(NO_FALL, (largest / fall - even) / (1 - even)) : NO_FALL;
    }
}
