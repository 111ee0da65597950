package dapple.light.field;

/**
 * A Gauss rule inside its Kronrod extension on [−1, 1]: nodes from 0 outwards, weights of the extension, and weights of
 * the Gauss rule, 0 where it has no node [quadpack; patterson1968].
 */
enum Rule {
    SEVEN(
            new double[] {0, 0.434243749346802558, 0.774596669241483377, 0.960491268708020283},
            new double[] {0.450916538658474142, 0.401397414775962223, 0.268488089868333441, 0.104656226026467265},
            new double[] {8.0 / 9, 0, 5.0 / 9, 0}),
    FIFTEEN(
            new double[] {
                0, 0.207784955007898468, 0.405845151377397167, 0.586087235467691130, 0.741531185599394440,
                0.864864423359769073, 0.949107912342758525, 0.991455371120812640
            },
            new double[] {
                0.209482141084727828, 0.204432940075298892, 0.190350578064785410, 0.169004726639267903,
                0.140653259715525919, 0.104790010322250184, 0.063092092629978553, 0.022935322010529225
            },
            new double[] {
                0.417959183673469388, 0, 0.381830050505118945, 0, 0.279705391489276668, 0, 0.129484966168869693, 0
            });

    final double[] nodes;
    final double[] weights;
    final double[] inner;

    Rule(double[] nodes, double[] weights, double[] inner) {
        this.nodes = nodes;
        this.weights = weights;
        this.inner = inner;
    }
}
