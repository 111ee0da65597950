package dapple.light.design;

import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import java.util.List;

/**
 * What is wanted of one quantity, at every one of some receivers.
 *
 * @param name what people call it
 * @param receivers at least one; not facing a lamp, since the lamps are still to be chosen
 * @param band limits, in the unit of the quantity
 */
public record Demand(String name, Kind kind, Quantity quantity, List<Receiver> receivers, Band band) {
    /** Inside this share of the way from the middle of the band to its edge, a place is as good as another. */
    private static final double EASY = 0.5;

    /** The least width of a band by logarithm, so that one without width can be asked for. */
    private static final double LEAST_WIDTH = 1e-6;

    public enum Kind {
        /** A range, as at a basking place; both limits are inside. */
        BAND,
        /** The most that a shady place may have, itself allowed. */
        SHADE,
        /** What no reachable place may reach, itself not allowed. */
        CEILING
    }

    public Demand {
        receivers = List.copyOf(receivers);
        if (receivers.isEmpty() || receivers.stream().anyMatch(at -> at.facing() instanceof Facing.TowardsLamp)) {
            throw new IllegalArgumentException("a demand must have receivers, none facing a lamp: " + name);
        }
    }

    public static Demand basking(String name, Quantity quantity, Receiver receiver, Band band) {
        return new Demand(name, Kind.BAND, quantity, List.of(receiver), band);
    }

    public static Demand shade(String name, Quantity quantity, Receiver receiver, double most) {
        return new Demand(name, Kind.SHADE, quantity, List.of(receiver), Band.atMost(most));
    }

    public static Demand ceiling(String name, Quantity quantity, List<Receiver> reachable, double ceiling) {
        return new Demand(name, Kind.CEILING, quantity, reachable, Band.atMost(ceiling));
    }

    private boolean hasHigh() {
        return band.high() < Double.MAX_VALUE;
    }

    public boolean isMetBy(double amount) {
        return amount >= band.low() && amount <= mostAllowed();
    }

    /** The largest amount that meets the demand. */
    double mostAllowed() {
        return kind == Kind.CEILING ? Math.nextDown(band.high()) : band.high();
    }

    /**
     * How far an amount lies from the middle of the band towards its edge, where it is 1; beyond, more. In a band with two
     * limits, |ln(a/m)| / ½ ln(high/low) about m = √(low · high), since light is judged by factors; below a high limit alone
     * a/high; above a low limit alone low/a.
     */
    double strain(double amount) {
        if (!hasHigh()) {
            return band.hasLow() ? band.low() / amount : 0;
        }
        if (!band.hasLow()) {
            return band.high() > 0 ? amount / band.high() : amount > 0 ? Double.POSITIVE_INFINITY : 0;
        }
        double halfWidth = Math.max(LEAST_WIDTH, Math.log(band.high() / band.low()) / 2);
        return Math.abs(Math.log(amount / Math.sqrt(band.low() * band.high()))) / halfWidth;
    }

    /** 0 up to half the way from the middle of the band to its edge, then growing as a square to 1 at the edge. */
    double loss(double amount) {
        double beyond = Math.max(0, strain(amount) - EASY) / (1 - EASY);
        return Math.min(1, beyond * beyond);
    }

    /** By what factor an amount is too low or too high; 1 where the demand is met. */
    public double missingFactor(double amount) {
        if (isMetBy(amount)) {
            return 1;
        }
        return amount < band.low() ? band.low() / amount : band.high() > 0 ? amount / band.high() : Double.MAX_VALUE;
    }
}
