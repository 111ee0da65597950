package dapple.light.judging;

import dapple.light.quantity.Check;

/**
 * What readings of one quantity are judged by, for one species or animal. Where nothing is asked, a band is
 * {@link Band#OPEN} and the ceiling {@link #NO_CEILING}.
 *
 * @param basking range at a basking point
 * @param shade range at a shade point
 * @param ceiling what no reachable point may reach
 */
public record Limits(Band basking, Band shade, double ceiling) {
    public static final double NO_CEILING = Double.MAX_VALUE;

    public Limits {
        double least = Math.max(shade.isOpen() ? 0 : shade.high(), basking.low());
        Check.within("ceiling", ceiling, least, Double.MAX_VALUE, "");
    }

    public Limits(Band basking, double shadeHigh, double ceiling) {
        this(basking, Band.atMost(shadeHigh), ceiling);
    }

    /** The most that a shade point may have. */
    public double shadeHigh() {
        return shade.high();
    }

    public boolean hasCeiling() {
        return ceiling < NO_CEILING;
    }

    /** The band that counts at a point: one that is neither basking nor shade has the ceiling alone. */
    public Band at(PointRole role) {
        Band own = switch (role) {
            case BASKING -> basking;
            case SHADE -> shade;
            case GRADIENT, NEAREST_REACHABLE, KEEPER -> Band.OPEN;
        };
        return own.isOpen() && hasCeiling() ? Band.atMost(ceiling) : own;
    }
}
