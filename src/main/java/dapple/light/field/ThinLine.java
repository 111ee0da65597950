package dapple.light.field;

/**
 * The light of a piece of a straight line whose elements are diffuse, seen from a place beside it. With h the distance
 * from the line, x along it from the foot of the perpendicular, and tan φ = x/h, a line of unit strength gives
 * across it ½ (φ + sin φ cos φ), along it ½ sin² φ, and from all round sin φ, each between its ends [simons2001].
 */
final class ThinLine {
    double across;
    double lengthwise;
    double round;

    /** The piece between two places along the line, from a place at a distance above 0, m. */
    void between(double distance, double low, double high) {
        double square = distance * distance;
        double toLow = 1 / Math.sqrt(square + low * low);
        double toHigh = 1 / Math.sqrt(square + high * high);
        double sinLow = low * toLow;
        double sinHigh = high * toHigh;
        double angle = Arctangent.angle(distance * (high - low), square + low * high);
        across = (angle + distance * (sinHigh * toHigh - sinLow * toLow)) / 2;
        round = sinHigh - sinLow;
        lengthwise = round * (sinHigh + sinLow) / 2;
    }
}
