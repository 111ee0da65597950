package dapple.light.field;

/** Nested rules on [−1, 1]: each has the nodes of the one before it and as many and one again [patterson1968]. */
final class Rule {
    static final int MOST = 15;

    /** From the middle, first all nodes of three, then what seven has beside them, then fifteen; the right of each pair. */
    private static final double[] NODES = {
        0.7745966692414834,
        0.43424374934680254,
        0.9604912687080203,
        0.2233866864289669,
        0.6211029467372264,
        0.888459232872257,
        0.993831963212755
    };

    static final Rule THREE = new Rule(0.8888888888888888, 0.5555555555555556);

    static final Rule SEVEN =
            new Rule(0.45091653865847414, 0.26848808986833345, 0.40139741477596225, 0.10465622602646726);

    static final Rule FIFTEEN = new Rule(
            0.2255104997982067,
            0.13441525524378423,
            0.20062852937698902,
            0.05160328299707974,
            0.2191568584015875,
            0.1715119091363914,
            0.09292719531512454,
            0.01700171962994026);

    private final double[] weights;

    private Rule(double... weights) {
        this.weights = weights;
    }

    int count() {
        return 2 * weights.length - 1;
    }

    /** The nodes of the rule before it. */
    int inner() {
        return weights.length - 1;
    }

    /** Node by its index: the middle, then pairs, the right one first. */
    static double node(int index) {
        if (index == 0) {
            return 0;
        }
        double right = NODES[(index - 1) / 2];
        return index % 2 == 1 ? right : -right;
    }

    /**
     * The sum of light at the nodes, scaled so that it is exact where the light is the same at all of them.
     *
     * @param given the weight that the light at each node has of itself
     * @param total the integral of that weight
     * @param half width of the interval
     * @return how far the rule misses that integral, as a share of it
     */
    double sum(Tally[] nodes, double[] given, double total, double half, Tally into) {
        into.clear();
        double sum = 0;
        for (int index = 0; index < count(); index++) {
            double weight = weights[(index + 1) / 2] * given[index];
            into.add(nodes[index], weight);
            sum += weight;
        }
        into.scale(total / sum);
        return half * sum / total - 1;
    }
}
