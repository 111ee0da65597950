package dapple.light.uncertainty;

import dapple.light.quantity.Check;

/**
 * Standard uncertainties of what a scene is made of.
 *
 * @param reading of each reading or emission of a lamp, relative, 0 to 10; independent of one another
 * @param meter of the calibration of the one meter that read all lamps of a quantity, relative, 0 to 10
 * @param positionMetres of each coordinate of a receiver and of the height of each lamp, independent, m, 0 to 10
 * @param model of what the engine makes of each lamp, relative, 0 to 10; independent of one another
 */
public record SceneUncertainty(double reading, double meter, double positionMetres, double model) {
    private static final double MOST = 10;

    public SceneUncertainty {
        Check.within("uncertainty of a reading", reading, 0, MOST, "");
        Check.within("uncertainty of a meter", meter, 0, MOST, "");
        Check.within("uncertainty of a position", positionMetres, 0, MOST, "m");
        Check.within("uncertainty of the model", model, 0, MOST, "");
    }
}
