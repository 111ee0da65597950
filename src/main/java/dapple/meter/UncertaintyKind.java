package dapple.meter;

import dapple.light.metrology.Evaluation;

/** How somebody states a part of a meter's uncertainty [jcgm100, 4.2 and 4.3]. */
public enum UncertaintyKind {
    /** Expanded, k = 2, as on most certificates. */
    EXPANDED,
    /** Standard uncertainty, or a standard deviation. */
    STANDARD,
    /** Anywhere within ± so much, as likely here as there. */
    HALF_WIDTH;

    private static final double COVERAGE_FACTOR = 2;

    Evaluation of(double share) {
        return switch (this) {
            case EXPANDED -> new Evaluation.Expanded(share, COVERAGE_FACTOR);
            case STANDARD -> new Evaluation.Standard(share);
            case HALF_WIDTH -> new Evaluation.Rectangular(share);
        };
    }
}
