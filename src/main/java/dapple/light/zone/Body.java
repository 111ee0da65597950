package dapple.light.zone;

import dapple.light.quantity.Check;

/**
 * The room that an animal takes up when it basks: a disc that must be lit evenly.
 *
 * @param lengthMetres diameter of the disc, above 0, m; whose length is taken is the keeper's setting
 * @param evenness the disc's light may differ from its middle value by less than this share, 0 to 1; a setting
 */
public record Body(double lengthMetres, double evenness) {
    /** ±25 %: a definition of ours, no source. */
    public static final double USUAL_EVENNESS = 0.25;

    public Body {
        Check.within("body length", lengthMetres, Double.MIN_NORMAL, Double.MAX_VALUE, "m");
        Check.within("evenness", evenness, 0, 1, "");
    }

    double radiusMetres() {
        return lengthMetres / 2;
    }
}
