package dapple.light.zone;

import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** The shares of the zones among some places, also if all their amounts are multiplied by one factor. */
public final class ZoneShares {
    private final ZoneTarget target;

    /** Most first, so that the zones follow one another as they are named. */
    private final double[] amounts;

    private ZoneShares(ZoneTarget target, double[] rising) {
        this.target = target;
        this.amounts = new double[rising.length];
        Arrays.setAll(amounts, index -> rising[rising.length - 1 - index]);
    }

    /**
     * The shares among the reachable places.
     *
     * @param found by index, at least 0; asked at reachable places alone
     */
    public static ZoneShares of(Space space, IntToDoubleFunction found, ZoneTarget target) {
        double[] amounts = IntStream.range(0, space.lattice().size())
                .filter(space::isReachable)
                .mapToDouble(found)
                .sorted()
                .toArray();
        return new ZoneShares(target, amounts);
    }

    /** How many places are reachable. */
    public int reachable() {
        return amounts.length;
    }

    /**
     * The shares if all amounts are multiplied by a factor; empty where nothing is reachable.
     *
     * @param factor above 0
     */
    public Map<Zone, Double> times(double factor) {
        requireFactor(factor);
        Map<Zone, Double> shares = new EnumMap<>(Zone.class);
        if (amounts.length > 0) {
            for (Zone zone : Zone.values()) {
                shares.put(zone, share(new Count(zone, factor).inside()));
            }
        }
        return shares;
    }

    /**
     * From the least to the most that each share is for any factor of an interval; empty where nothing is reachable. A
     * share need not be least or most at an end of the interval: a patch may pass through basking between.
     *
     * @param factors above 0
     */
    public Map<Zone, Interval> within(Interval factors) {
        requireFactor(factors.low());
        Map<Zone, Interval> shares = new EnumMap<>(Zone.class);
        if (amounts.length > 0) {
            for (Zone zone : Zone.values()) {
                shares.put(zone, range(zone, factors));
            }
        }
        return shares;
    }

    private static void requireFactor(double factor) {
        Check.within("factor", factor, Double.MIN_NORMAL, Double.MAX_VALUE, "");
    }

    private double share(int count) {
        return (double) count / amounts.length;
    }

    /** Raises the factor from event to event, at each of which places enter the zone from below or leave it above. */
    private Interval range(Zone zone, Interval factors) {
        Count count = new Count(zone, factors.low());
        int last = new Count(zone, factors.high()).inside();
        int least = Math.min(last, count.inside());
        int most = Math.max(last, count.inside());
        for (double next = count.next(); next < factors.high(); next = count.next()) {
            count.pass(next);
            least = Math.min(least, count.inside());
            most = Math.max(most, count.inside());
        }
        return new Interval(share(least), share(most));
    }

    /** How many places are in a zone while the factor rises. */
    private final class Count {
        private final double low;
        private final double high;

        /** The first place that is still below the zone. */
        private int enters;

        /** The first place that is not yet above it. */
        private int leaves;

        Count(Zone zone, double factor) {
            this.low = target.from(zone);
            this.high = target.to(zone);
            this.enters = first(index -> target.of(amounts[index] * factor).compareTo(zone) > 0);
            this.leaves = first(index -> target.of(amounts[index] * factor).compareTo(zone) >= 0);
        }

        int inside() {
            return enters - leaves;
        }

        double next() {
            return Math.min(factor(low, enters), factor(high, leaves));
        }

        void pass(double factor) {
            while (factor(low, enters) <= factor) {
                enters++;
            }
            while (factor(high, leaves) <= factor) {
                leaves++;
            }
        }

        /** The factor at which a place reaches a limit. */
        private double factor(double limit, int index) {
            return index < amounts.length && amounts[index] > 0 ? limit / amounts[index] : Double.POSITIVE_INFINITY;
        }
    }

    /** The first index at which something holds that holds for all after it. */
    private int first(IntPredicate holds) {
        int from = 0;
        int to = amounts.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (holds.test(middle)) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        return from;
    }
}
