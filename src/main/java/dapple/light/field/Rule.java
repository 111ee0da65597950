package dapple.light.field;

/**
 * A Gauss rule inside its Kronrod extension on [−1, 1]: nodes from 0 outwards, weights of the extension, and weights of
 * the Gauss rule, 0 where it has no node [quadpack; patterson1968].
 */
final class Rule {
    static final Rule SEVEN = new Rule(
            new double[] {0, 0.43424374934680254, 0.7745966692414834, 0.9604912687080203},
            new double[] {0.45091653865847414, 0.40139741477596225, 0.26848808986833345, 0.10465622602646726},
            new double[] {8.0 / 9, 0, 5.0 / 9, 0});

    static final Rule FIFTEEN = new Rule(
            new double[] {
                0,
                0.20778495500789848,
                0.4058451513773972,
                0.5860872354676911,
                0.7415311855993945,
                0.8648644233597691,
                0.9491079123427585,
                0.9914553711208126
            },
            new double[] {
                0.20948214108472782, 0.20443294007529889, 0.19035057806478542, 0.1690047266392679,
                0.14065325971552592, 0.10479001032225019, 0.06309209262997856, 0.022935322010529224
            },
            new double[] {0.4179591836734694, 0, 0.3818300505051189, 0, 0.27970539148927664, 0, 0.1294849661688697, 0});

    final double[] nodes;
    final double[] weights;
    final double[] inner;

    private Rule(double[] nodes, double[] weights, double[] inner) {
        this.nodes = nodes;
        this.weights = weights;
        this.inner = inner;
    }
}
