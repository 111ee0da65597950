package dapple.light.field;

/**
 * Adaptive integration over an interval. A piece is looked at by the nested rules of 3, 7 and 15 nodes until two
 * of them agree [patterson1968]; where they do not agree, the worst piece is halved until the sum of the pieces'
 * estimates is within what is allowed. The estimate of a piece is how far its last two rules differ, or less, by as much
 * as they agree better than the two before; but rules may agree by chance, so that of a share by which the first two
 * differ never less than its fourth power is claimed of seven nodes, than its eighth of fifteen. (Of a smooth integrand
 * the errors fall like its sixth and twelfth.)
 */
final class Quadrature {
    private static final int MOST_PIECES = 400;

    /** Rounding that no rule goes below, as a share of the value. */
    private static final double ROUNDING = 1e-14;

    /** A piece is looked at until its own estimate is this share of what is allowed for all. */
    private static final double OF_ALLOWED = 0.5;

    /** An integrand whose rules agree no better than this is halved rather than looked at more closely. */
    private static final double ROUGH = 0.3;

    /** A rule that misses the weight itself by more is not believed, whatever the difference. */
    private static final double OF_WEIGHT = 0.005;

    /** Of a weighted straight line three nodes miss about a twentieth of what they differ by from one. */
    private static final double OF_THREE = 0.15;

    /** How far the next improvement may fall short of the last. */
    private static final double CAUTION = 10;

    private final Tally[] nodes = new Tally[Rule.MOST];
    private final double[] weights = new double[Rule.MOST];
    private boolean isSmooth;
    private long pattern;
    private final Tally rule = new Tally();
    private final Tally lastRule = new Tally();
    private final Tally whole = new Tally();
    private final Tally[] sums = new Tally[MOST_PIECES];
    private final double[] lows = new double[MOST_PIECES];
    private final double[] highs = new double[MOST_PIECES];
    private final double[] errors = new double[MOST_PIECES];

    Quadrature() {
        for (int index = 0; index < nodes.length; index++) {
            nodes[index] = new Tally();
        }
    }

    /**
     * What is asked of an integral.
     *
     * @param share of the larger of the value and the floor that the error may be
     * @param weight that the integrand has beside what its slices give
     * @param doubt that rules which agree do not agree by chance
     * @param isNarrow whether the source is narrow against the distance at which its light falls off, so that the light
     *     of its chords is nearly straight across and three nodes err less than they differ from one
     */
    record Goal(View view, double share, double floor, Slices.Weight weight, double doubt, boolean isNarrow) {
        /** The power of the first difference that is never claimed to be undercut by seven nodes. */
        static final double USUAL_DOUBT = 4;

        /** The same where the integrand is known to have no peaks, so that the rules' own powers may be believed. */
        private static final double LEAST_DOUBT = 6;

        private static final Slices.Weight EVEN = new Slices.Weight() {};

        static Goal ofAngles(View view, double share, boolean hasPeaks) {
            return new Goal(view, share, 0, EVEN, hasPeaks ? USUAL_DOUBT : LEAST_DOUBT, false);
        }

        double allowed(double value) {
            return share * Math.max(value, floor);
        }
    }

    /**
     * Integrates and adds the result to a sum.
     *
     * @return the estimated error of the view's figure
     */
    double integrate(Slices slices, double low, double high, Goal goal, Tally result) {
        whole.clear();
        look(slices, 0, low, high, goal);
        return refine(slices, 1, goal, result);
    }

    /** The same over a range with breaks, between which the integrand is smooth. */
    double integrate(Slices slices, Breaks breaks, Goal goal, Tally result) {
        whole.clear();
        int pieces = Math.min(breaks.pieces(), MOST_PIECES);
        for (int piece = 0; piece < pieces; piece++) {
            double high = piece + 1 < pieces ? breaks.at(piece + 1) : breaks.at(breaks.pieces());
            look(slices, piece, breaks.at(piece), high, goal);
            whole.add(sums[piece], 1);
        }
        return refine(slices, pieces, goal, result);
    }

    private double refine(Slices slices, int started, Goal goal, Tally result) {
        int pieces = started;
        double error = sum(pieces);
        while (error > goal.allowed(total(goal.view(), pieces)) && pieces < MOST_PIECES) {
            int worst = worst(pieces);
            double middle = (lows[worst] + highs[worst]) / 2;
            double end = highs[worst];
            if (!(middle > lows[worst] && middle < end)) {
                break;
            }
            whole.add(sums[worst], -1);
            look(slices, worst, lows[worst], middle, goal);
            whole.add(sums[worst], 1);
            look(slices, pieces, middle, end, goal);
            pieces++;
            error = sum(pieces);
        }
        for (int piece = 0; piece < pieces; piece++) {
            result.add(sums[piece], 1);
        }
        return error;
    }

    private double total(View view, int pieces) {
        whole.clear();
        for (int piece = 0; piece < pieces; piece++) {
            whole.add(sums[piece], 1);
        }
        return Math.abs(view.figure(whole));
    }

    private double sum(int pieces) {
        double sum = 0;
        for (int piece = 0; piece < pieces; piece++) {
            sum += errors[piece];
        }
        return sum;
    }

    private int worst(int pieces) {
        int worst = 0;
        for (int piece = 1; piece < pieces; piece++) {
            if (errors[piece] > errors[worst]) {
                worst = piece;
            }
        }
        return worst;
    }

    /** Looks at one piece, the rest being known as the whole. */
    private void look(Slices slices, int piece, double low, double high, Goal goal) {
        View view = goal.view();
        double total = goal.weight().weight(low, high);
        isSmooth = true;
        evaluate(slices, goal, low, high, 0, Rule.THREE.count());
        lastRule.clear();
        lastRule.add(nodes[0], total);
        double missed = Math.abs(Rule.THREE.sum(nodes, weights, total, (high - low) / 2, rule));
        double difference = view.difference(rule, lastRule);
        double first = difference / Math.max(Math.abs(view.figure(rule)), Double.MIN_NORMAL);
        double error = goal.isNarrow() && isSmooth ? difference * Math.min(1, OF_THREE + CAUTION * first) : difference;
        error = missed > OF_WEIGHT ? Double.POSITIVE_INFINITY : error;
        for (Rule next = Rule.SEVEN; error > OF_ALLOWED * goal.allowed(withRest(view)); next = Rule.FIFTEEN) {
            lastRule.set(rule);
            evaluate(slices, goal, low, high, next.inner(), next.count());
            next.sum(nodes, weights, total, (high - low) / 2, rule);
            double nextDifference = view.difference(rule, lastRule);
            double gain = difference > 0 ? nextDifference / difference : 0;
            double least = Math.pow(first, next == Rule.SEVEN ? goal.doubt() : 2 * goal.doubt());
            error = isSmooth ? nextDifference * Math.min(1, CAUTION * gain) : nextDifference;
            error = Math.max(error, least * Math.abs(view.figure(rule)));
            difference = nextDifference;
            if (next == Rule.FIFTEEN || gain > ROUGH || !isSmooth) {
                break;
            }
        }
        keep(piece, low, high, Math.max(error, ROUNDING * Math.abs(view.figure(rule))));
    }

    private double withRest(View view) {
        return Math.abs(view.figure(whole) + view.figure(rule));
    }

    private void keep(int piece, double low, double high, double error) {
        if (sums[piece] == null) {
            sums[piece] = new Tally();
        }
        sums[piece].set(rule);
        lows[piece] = low;
        highs[piece] = high;
        errors[piece] = error;
    }

    private void evaluate(Slices slices, Goal goal, double low, double high, int from, int to) {
        double middle = (low + high) / 2;
        double half = (high - low) / 2;
        for (int index = from; index < to; index++) {
            nodes[index].clear();
            double at = middle + half * Rule.node(index);
            weights[index] = goal.weight().weight(at);
            slices.light(at, nodes[index]);
            if (index == 0) {
                pattern = slices.pattern();
            }
            isSmooth = isSmooth && slices.pattern() == pattern;
        }
    }
}
