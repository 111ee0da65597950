package dapple.light.expectation;

import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Whether a typed amount is likely at its point, and which slips an unlikely one suggests, the likeliest first. The script of the
 * page without signal follows the same rule; both are tested against one table.
 */
public sealed interface Plausibility {
    /** The amount is what was to be expected. */
    record Likely() implements Plausibility {}

    /**
     * The amount is unlikely.
     *
     * @param slips at most three, the likeliest first
     */
    record Unlikely(Direction direction, List<Slip> slips) implements Plausibility {
        public Unlikely {
            slips = List.copyOf(slips);
        }
    }

    /** To which side. */
    enum Direction {
        LOW,
        HIGH
    }

    /**
     * What else is expected where an amount was read, as displayed.
     *
     * @param otherPoints of the same quantity at the other points of the enclosure
     * @param otherQuantities of the other quantities at the same point
     * @param isCold whether a lamp that gives of the quantity had not warmed up
     */
    record Surroundings(List<Interval> otherPoints, List<Interval> otherQuantities, boolean isCold) {
        public static final Surroundings NONE = new Surroundings(List.of(), List.of(), false);

        public Surroundings {
            otherPoints = List.copyOf(otherPoints);
            otherQuantities = List.copyOf(otherQuantities);
        }
    }

    /**
     * Holds an amount against what is expected.
     *
     * @param amount as displayed
     * @param expected the likely amounts, as displayed
     */
    static Plausibility of(Quantity quantity, double amount, Interval expected, Surroundings surroundings) {
        return expected.contains(amount) ? new Likely() : new Search(quantity, amount, expected, surroundings).found();
    }

    /** The slips of one unlikely amount. */
    record Search(Quantity quantity, double amount, Interval expected, Surroundings surroundings) {
        private static final int MOST = 3;

        /** A decimal point may be off by two places. */
        private static final double[] TENS = {10, 0.1, 100, 0.01};

        /**
         * Amount in another unit over amount in ours: µW/cm² of erythemal irradiance and mW/m² for the UV index, klx and
         * foot-candles (lm/ft²) for lx, mW/cm² for W/m², W/m² for µW/cm².
         */
        private static final Map<Quantity, double[]> OTHER_UNITS = new EnumMap<>(Map.of(
                Quantity.UV_INDEX, new double[] {2.5, 25},
                Quantity.ILLUMINANCE, new double[] {0.001, 0.0929},
                Quantity.UVA, new double[] {0.1},
                Quantity.IRRADIANCE, new double[] {0.1},
                Quantity.UVB_IRRADIANCE, new double[] {0.01}));

        private static final double ZERO_CELSIUS_IN_FAHRENHEIT = 32;
        private static final double FAHRENHEIT_PER_CELSIUS = 1.8;

        Unlikely found() {
            Direction direction = amount < expected.low() ? Direction.LOW : Direction.HIGH;
            return new Unlikely(
                    direction,
                    Stream.concat(told(), usual(direction))
                            .distinct()
                            .limit(MOST)
                            .toList());
        }

        /** What the number itself suggests. */
        private Stream<Slip> told() {
            return Stream.of(
                            when(direction(Direction.LOW) && surroundings.isCold(), Slip.NOT_WARM),
                            when(isAnotherQuantity(), Slip.WRONG_QUANTITY),
                            when(isAnotherPoint(), Slip.POINT_MISSED),
                            when(isAnotherUnit(), Slip.WRONG_UNIT),
                            when(isDecimalOff(), Slip.DECIMAL_POINT))
                    .flatMap(slip -> slip);
        }

        private static Stream<Slip> usual(Direction direction) {
            return direction == Direction.LOW
                    ? Stream.of(Slip.SENSOR_TURNED, Slip.LIGHT_CHANGED, Slip.POINT_MISSED)
                    : Stream.of(Slip.TOO_NEAR, Slip.LIGHT_CHANGED, Slip.POINT_MISSED);
        }

        private boolean direction(Direction asked) {
            return asked == (amount < expected.low() ? Direction.LOW : Direction.HIGH);
        }

        private static Stream<Slip> when(boolean holds, Slip slip) {
            return holds ? Stream.of(slip) : Stream.empty();
        }

        private boolean isAnotherQuantity() {
            return surroundings.otherQuantities().stream().anyMatch(other -> other.contains(amount));
        }

        private boolean isAnotherPoint() {
            return surroundings.otherPoints().stream().anyMatch(other -> other.contains(amount));
        }

        private boolean isAnotherUnit() {
            if (quantity.isTemperature()) {
                return expected.contains((amount - ZERO_CELSIUS_IN_FAHRENHEIT) / FAHRENHEIT_PER_CELSIUS);
            }
            return Arrays.stream(OTHER_UNITS.getOrDefault(quantity, new double[0]))
                    .anyMatch(factor -> expected.contains(amount / factor));
        }

        private boolean isDecimalOff() {
            return amount != 0 && Arrays.stream(TENS).anyMatch(ten -> expected.contains(amount * ten));
        }
    }
}
