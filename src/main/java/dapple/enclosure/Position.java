package dapple.enclosure;

import dapple.light.quantity.Check;
import jakarta.persistence.Embeddable;

/** A place in an enclosure: m right of, behind and above its front-left-bottom inner corner. */
@Embeddable
public record Position(double xMetres, double yMetres, double zMetres) {
    private static final double LEAST = -9.99;
    private static final double MOST = 99.99;

    public Position {
        Check.within("x", xMetres, LEAST, MOST, "m");
        Check.within("y", yMetres, LEAST, MOST, "m");
        Check.within("z", zMetres, LEAST, MOST, "m");
    }
}
