package dapple.light.field;

/**
 * Adaptive integration over an interval: nested Gauss–Kronrod rules, the worst piece halved until the sum of the
 * pieces' estimates is within what is allowed. The estimate of a piece is that of QUADPACK [quadpack]:
 * r · min(1, (200 · |K − G| / r)^1.5), r the spread of the integrand, never less than rounding.
 */
final class Quadrature {
    private static final int MOST_PIECES = 400;
    private static final double ROUNDING = 1e-14;

    private final Tally node = new Tally();
    private final Tally inner = new Tally();
    private final Tally whole = new Tally();
    private final Tally[] sums = new Tally[MOST_PIECES];
    private final double[] lows = new double[MOST_PIECES];
    private final double[] highs = new double[MOST_PIECES];
    private final double[] errors = new double[MOST_PIECES];

    /**
     * Integrates and adds the result to a sum.
     *
     * @param start the rule that is tried first
     * @param leastPieces how many pieces are looked at before an estimate is believed, 1 or 2 for instance
     * @param allowed the largest error of the view's figure that is accepted
     * @return the estimated error
     */
    double integrate(
            Slices slices,
            double low,
            double high,
            View view,
            Rule start,
            int leastPieces,
            Allowed allowed,
            Tally result) {
        int pieces = leastPieces;
        double error = lookAtAll(slices, low, high, view, start, pieces);
        if (start != Rule.FIFTEEN && error > allowed.error(total(view, pieces))) {
            error = lookAtAll(slices, low, high, view, Rule.FIFTEEN, pieces);
        }
        while (error > allowed.error(total(view, pieces)) && pieces < MOST_PIECES) {
            int worst = worst(pieces);
            double middle = (lows[worst] + highs[worst]) / 2;
            double end = highs[worst];
            if (!(middle > lows[worst] && middle < end)) {
                break;
            }
            error -= errors[worst];
            error += look(slices, worst, lows[worst], middle, view, Rule.FIFTEEN);
            error += look(slices, pieces, middle, end, view, Rule.FIFTEEN);
            pieces++;
        }
        for (int piece = 0; piece < pieces; piece++) {
            result.add(sums[piece], 1);
        }
        return Math.max(error, 0);
    }

    private double lookAtAll(Slices slices, double low, double high, View view, Rule rule, int pieces) {
        double width = (high - low) / pieces;
        double error = 0;
        for (int piece = 0; piece < pieces; piece++) {
            error += look(slices, piece, low + piece * width, low + (piece + 1) * width, view, rule);
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

    private int worst(int pieces) {
        int worst = 0;
        for (int piece = 1; piece < pieces; piece++) {
            if (errors[piece] > errors[worst]) {
                worst = piece;
            }
        }
        return worst;
    }

    private double look(Slices slices, int piece, double low, double high, View view, Rule rule) {
        lows[piece] = low;
        highs[piece] = high;
        if (sums[piece] == null) {
            sums[piece] = new Tally();
        }
        Tally sum = sums[piece];
        sum.clear();
        inner.clear();
        double middle = (low + high) / 2;
        double half = (high - low) / 2;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int index = 0; index < rule.nodes.length; index++) {
            for (int side = index == 0 ? 1 : -1; side <= 1; side += 2) {
                node.clear();
                slices.light(middle + side * half * rule.nodes[index], node);
                sum.add(node, half * rule.weights[index]);
                if (rule.inner[index] != 0) {
                    inner.add(node, half * rule.inner[index]);
                }
                double figure = view.figure(node);
                least = Math.min(least, figure);
                most = Math.max(most, figure);
            }
        }
        double spread = Math.max((most - least) * half, ROUNDING * Math.abs(view.figure(sum)));
        errors[piece] =
                spread == 0 ? 0 : spread * Math.min(1, Math.pow(200 * view.difference(sum, inner) / spread, 1.5));
        return errors[piece];
    }

    /** The largest error that is accepted: a share of the larger of the value and a floor. */
    record Allowed(double share, double floor) {
        double error(double value) {
            return share * Math.max(value, floor);
        }
    }
}
