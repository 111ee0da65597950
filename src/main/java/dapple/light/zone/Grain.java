package dapple.light.zone;

/** How finely a resting surface is looked at; settings of ours. */
public enum Grain {
    FINE(100, 40),

    /** While somebody waits: a disc as wide as the body may be taken for a sixth narrower, hardly for wider. */
    ROUGH(16, 16);

    private final double cellsAcrossBody;
    private final double cellsAcrossSide;

    /**
     * A grain.
     *
     * @param cellsAcrossBody along the length of who rests there, at least
     * @param cellsAcrossSide along the shorter side of the surface, at least
     */
    Grain(double cellsAcrossBody, double cellsAcrossSide) {
        this.cellsAcrossBody = cellsAcrossBody;
        this.cellsAcrossSide = cellsAcrossSide;
    }

    /** The larger step that is fine enough, m. */
    double stepMetres(double shorterSideMetres, double bodyLengthMetres) {
        return Math.min(bodyLengthMetres / cellsAcrossBody, shorterSideMetres / cellsAcrossSide);
    }
}
