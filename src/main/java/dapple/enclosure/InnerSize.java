package dapple.enclosure;

import dapple.light.quantity.Check;
import jakarta.persistence.Embeddable;

/** Inner width (left to right), depth (front to back) and height of an enclosure, each above 0 and below 100 m. */
@Embeddable
public record InnerSize(double widthMetres, double depthMetres, double heightMetres) {
    private static final double LEAST = 0.01;
    private static final double MOST = 99.99;

    public InnerSize {
        Check.within("width", widthMetres, LEAST, MOST, "m");
        Check.within("depth", depthMetres, LEAST, MOST, "m");
        Check.within("height", heightMetres, LEAST, MOST, "m");
    }
}
