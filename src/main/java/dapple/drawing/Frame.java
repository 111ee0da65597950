package dapple.drawing;

import java.util.List;

/**
 * Puts what is drawn on paper 640 units wide, to one scale in both directions.
 *
 * @param left of the place at the left, units
 * @param bottom of the lowest place, units
 * @param from the lowest place at the left
 */
record Frame(double left, double bottom, double unitsPerMetre, Place from) {
    static final double WIDTH = 640;
    private static final double SIDE = 20;
    private static final double CLEAR = 12;
    private static final double MOST_HEIGHT = 480;

    /**
     * Holds all of some places.
     *
     * @param above room above them, for what is drawn larger than it is, and for words; units
     */
    static Frame around(List<Place> places, double above) {
        double low = least(places.stream().mapToDouble(Place::acrossMetres).toArray());
        double right = -least(
                places.stream().mapToDouble(place -> -place.acrossMetres()).toArray());
        double floor = least(places.stream().mapToDouble(Place::upMetres).toArray());
        double top =
                -least(places.stream().mapToDouble(place -> -place.upMetres()).toArray());
        double scale = Math.min((WIDTH - 2 * SIDE) / (right - low), MOST_HEIGHT / (top - floor));
        double left = (WIDTH - (right - low) * scale) / 2;
        return new Frame(left, CLEAR + above + (top - floor) * scale, scale, new Place(low, floor));
    }

    private static double least(double[] numbers) {
        double least = Double.POSITIVE_INFINITY;
        for (double number : numbers) {
            least = Math.min(least, number);
        }
        return least;
    }

    double x(double acrossMetres) {
        return left + (acrossMetres - from.acrossMetres()) * unitsPerMetre;
    }

    double y(double upMetres) {
        return bottom - (upMetres - from.upMetres()) * unitsPerMetre;
    }

    Spot spot(Place place) {
        return new Spot(x(place.acrossMetres()), y(place.upMetres()));
    }
}
