package dapple.light.metrology;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * What the readings of one set of lamps say of its light so far: ln of each point's level, how fast all of them decline,
 * and how much each meter differs from the others under these lamps. A Kalman filter [kalman1960] whose state is carried
 * together with its dependence on the unknown gains, so that what they are may be asked afterwards [dejong1991].
 */
final class LampFilter {
    /** Of a level that nobody knows, ln². */
    private static final double UNKNOWN_LEVEL = 9;

    /** How far the light moves when lamps are changed and nobody says so, ln², together and point by point (ours). */
    private static final double CHANGE_OF_ALL = 0.25;

    private static final double CHANGE_OF_ONE = 0.0625;

    /** Wandering of ln output, (0.02)² in 1000 h, three quarters of it by all points together (ours, no source). */
    private static final double WANDER_PER_HOUR = 4e-7;

    private static final double TOGETHER = 0.75;

    /** Wandering of the decline, (2e-5 per h)² in 1000 h (ours, no source). */
    private static final double RATE_WANDER_PER_HOUR = 4e-13;

    private final DeclineOfClass decline;
    private final int meters;
    private final Map<String, Integer> points = new HashMap<>();
    private final Row columns = new Row();

    private double[] mean;
    private double[][] covariance;
    private double[][] slopes;
    private double at;

    LampFilter(LampSet lamps, Gauge gauge, double years) {
        decline = lamps.decline();
        meters = gauge.meters();
        at = years;
        mean = new double[1 + meters];
        covariance = new double[1 + meters][1 + meters];
        slopes = new double[1 + meters][0];
        mean[0] = decline.meanPerYear();
        covariance[0][0] = decline.variancePerYear();
        for (int meter = 1; meter <= meters; meter++) {
            covariance[meter][meter] = gauge.mismatch() * gauge.mismatch();
        }
        slopes[0] = new double[] {decline.meanPerYear()};
        columns.placeOf(GainInformation.columnOfDeclines());
        widen();
    }

    /** What all filters of a collection have in common. */
    record Gauge(int meters, double mismatch) {}

    /** Lets the lamps age to a time. */
    void advance(double years) {
        double step = years - at;
        if (step <= 0) {
            return;
        }
        at = years;
        for (int level = 1 + meters; level < mean.length; level++) {
            mean[level] -= step * mean[0];
            for (int column = 0; column < columns.size(); column++) {
                slopes[level][column] -= step * slopes[0][column];
            }
        }
        age(step);
        wander(step * decline.hoursPerYear());
    }

    private void age(double step) {
        for (int level = 1 + meters; level < mean.length; level++) {
            for (int other = 0; other < mean.length; other++) {
                covariance[level][other] -= step * covariance[0][other];
            }
        }
        for (int level = 1 + meters; level < mean.length; level++) {
            for (int other = 0; other < mean.length; other++) {
                covariance[other][level] -= step * covariance[other][0];
            }
        }
    }

    private void wander(double hours) {
        addToLevels(TOGETHER * WANDER_PER_HOUR * hours, (1 - TOGETHER) * WANDER_PER_HOUR * hours);
        covariance[0][0] += RATE_WANDER_PER_HOUR * hours * decline.hoursPerYear() * decline.hoursPerYear();
    }

    private void addToLevels(double together, double alone) {
        for (int level = 1 + meters; level < mean.length; level++) {
            for (int other = 1 + meters; other < mean.length; other++) {
                covariance[level][other] += together + (level == other ? alone : 0);
            }
        }
    }

    /** Somebody has changed the lamps, it seems: the levels and the decline are looked for anew. */
    void restart() {
        addToLevels(CHANGE_OF_ALL, CHANGE_OF_ONE);
        covariance[0][0] += decline.variancePerYear();
    }

    /** One point is lit otherwise, it seems. */
    void restart(String point) {
        int level = level(point, 0);
        covariance[level][level] += CHANGE_OF_ALL;
    }

    /** The place of a point's level in the state; a new point is first expected where it was first read. */
    private int level(String point, double lnAmount) {
        return points.computeIfAbsent(point, key -> {
            int level = mean.length;
            mean = Arrays.copyOf(mean, level + 1);
            mean[level] = lnAmount;
            double[][] larger = new double[level + 1][level + 1];
            for (int i = 0; i < level; i++) {
                System.arraycopy(covariance[i], 0, larger[i], 0, level);
            }
            larger[level][level] = UNKNOWN_LEVEL;
            covariance = larger;
            slopes = Arrays.copyOf(slopes, level + 1);
            slopes[level] = new double[slopes[0].length];
            return level;
        });
    }

    private void widen() {
        for (int i = 0; i < slopes.length; i++) {
            if (slopes[i].length < columns.size()) {
                slopes[i] = Arrays.copyOf(slopes[i], Math.max(columns.size(), 2 * slopes[i].length));
            }
        }
    }

    /** What a reading adds to what is known, before it is taken in. */
    Innovation innovation(Sighting sighting) {
        int level = level(sighting.reading().point(), sighting.reading().lnAmount());
        int place = columns.placeOf(sighting.column());
        widen();
        int offset = 1 + sighting.meter();
        Row row = new Row();
        for (int i = 0; i < columns.size(); i++) {
            row.append(columns.column(i), slopes[level][i] + slopes[offset][i] + (i == place ? 1 : 0));
        }
        double expected = mean[level] + mean[offset];
        double variance = covariance[level][level] + 2 * covariance[level][offset] + covariance[offset][offset];
        return new Innovation(row, sighting.reading().lnAmount() - expected, variance);
    }

    /** Covariance of what is expected of two points, each by its meter. */
    double covariance(Sighting one, Sighting other) {
        int first = level(one.reading().point(), 0);
        int second = level(other.reading().point(), 0);
        return covariance[first][second]
                + covariance[first][1 + other.meter()]
                + covariance[1 + one.meter()][second]
                + covariance[1 + one.meter()][1 + other.meter()];
    }

    /** Takes a reading in. */
    void take(Sighting sighting, Innovation innovation, double noise) {
        int level = level(sighting.reading().point(), 0);
        int offset = 1 + sighting.meter();
        double total = innovation.variance() + noise;
        double[] seen = new double[mean.length];
        for (int i = 0; i < seen.length; i++) {
            seen[i] = covariance[i][level] + covariance[i][offset];
        }
        for (int i = 0; i < seen.length; i++) {
            double gain = seen[i] / total;
            mean[i] += gain * innovation.difference();
            for (int j = 0; j < seen.length; j++) {
                covariance[i][j] -= gain * seen[j];
            }
            for (int column = 0; column < innovation.row().size(); column++) {
                slopes[i][column] -= gain * innovation.row().amount(column);
            }
        }
    }
}
