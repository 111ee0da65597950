package dapple.light.metrology;

import dapple.light.quantity.Check;

/**
 * One input's part in the uncertainty of a reading: c · u. A share counts with the exponent of the input in the product
 * that gives the reading, c = ∂ ln y/∂ ln x (a distance of which the light falls with the power p: p); an amount with
 * c = ∂y/∂x [jcgm100, 5.1].
 *
 * @param sensitivity c, finite, of any sign
 */
public record Contribution(Cause cause, Basis basis, Evaluation evaluation, double sensitivity) {
    /** What u is measured in. */
    public enum Basis {
        /** A share of the input. */
        SHARE,
        /** In the input's unit. */
        AMOUNT
    }

    public Contribution {
        Check.within("sensitivity", sensitivity, -Double.MAX_VALUE, Double.MAX_VALUE, "");
    }

    public static Contribution ofShare(Cause cause, Evaluation evaluation) {
        return new Contribution(cause, Basis.SHARE, evaluation, 1);
    }

    public static Contribution ofAmount(Cause cause, Evaluation evaluation) {
        return new Contribution(cause, Basis.AMOUNT, evaluation, 1);
    }

    public Contribution withSensitivity(double other) {
        return new Contribution(cause, basis, evaluation, other);
    }

    /** |c| · u of a reading, in its unit. */
    public double at(double amount) {
        return part() * (basis == Basis.SHARE ? Math.abs(amount) : 1);
    }

    /** |c| · u, a share of the reading or an amount. */
    double part() {
        return Math.abs(sensitivity) * evaluation.standard();
    }
}
