package dapple.light.field;

import java.util.List;

/**
 * Cubature on the unit disc: the middle, and rules of degree 3, 5 and 7 [stroud1971, S2 3-1, 5-1, 7-1]. Weights are shares of the area.
 */
final class FaceRule {
    static final FaceRule ONE = new FaceRule(new double[][] {{0, 0}}, new double[] {1});

    static final FaceRule FOUR = new FaceRule(ring(Math.sqrt(0.5), 4, 0), new double[] {0.25, 0.25, 0.25, 0.25});

    static final FaceRule SEVEN = new FaceRule(
            withCentre(ring(Math.sqrt(2.0 / 3), 6, 0)), new double[] {0.25, 0.125, 0.125, 0.125, 0.125, 0.125, 0.125});

    static final FaceRule TWELVE = new FaceRule(twelvePlaces(), twelveWeights());

    /** All but the first, by their degree. */
    static final List<FaceRule> RISING = List.of(FOUR, SEVEN, TWELVE);

    final double[][] places;
    final double[] weights;

    private FaceRule(double[][] places, double[] weights) {
        this.places = places;
        this.weights = weights;
    }

    private static double[][] ring(double radius, int count, double turn) {
        double[][] places = new double[count][];
        for (int index = 0; index < count; index++) {
            double angle = turn + 2 * Math.PI * index / count;
            places[index] = new double[] {radius * Math.cos(angle), radius * Math.sin(angle)};
        }
        return places;
    }

    private static double[][] withCentre(double[][] ring) {
        double[][] places = new double[ring.length + 1][];
        places[0] = new double[] {0, 0};
        System.arraycopy(ring, 0, places, 1, ring.length);
        return places;
    }

    private static double[][] twelvePlaces() {
        double inner = Math.sqrt((27 - 3 * Math.sqrt(29)) / 104);
        double outer = Math.sqrt((27 + 3 * Math.sqrt(29)) / 104);
        double[][] places = new double[12][];
        System.arraycopy(ring(Math.sqrt(0.75), 4, 0), 0, places, 0, 4);
        System.arraycopy(ring(inner * Math.sqrt(2), 4, Math.PI / 4), 0, places, 4, 4);
        System.arraycopy(ring(outer * Math.sqrt(2), 4, Math.PI / 4), 0, places, 8, 4);
        return places;
    }

    private static double[] twelveWeights() {
        double inner = (551 + 41 * Math.sqrt(29)) / 6264;
        double outer = (551 - 41 * Math.sqrt(29)) / 6264;
        double ring = 2.0 / 27;
        return new double[] {ring, ring, ring, ring, inner, inner, inner, inner, outer, outer, outer, outer};
    }
}
