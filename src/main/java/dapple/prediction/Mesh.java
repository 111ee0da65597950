package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.light.geometry.Vec;
import dapple.light.zone.Grain;
import dapple.light.zone.Lattice;

/** How finely an enclosure is looked at: coarse enough to be computed while somebody waits; steps are ours, no source. */
enum Mesh {
    FINE(2000, 48, Grain.FINE),

    /** While something is being moved: the ceiling is not to be missed, so that the room is looked at as finely. */
    ROUGH(2000, 36, Grain.ROUGH);

    private static final double LEAST_METRES = 0.02;
    private static final double CENTIMETRES = 100;

    /** Share of a step by which the last place may lie beyond the end, for the sake of decimals such as 0.1. */
    private static final double SLACK = 1e-6;

    private final double places;
    private final double stepsAcross;
    private final Grain grain;

    /**
     * A mesh.
     *
     * @param places about so many share the room for zones
     * @param stepsAcross of a drawing, along its longer side
     * @param grain of resting places
     */
    Mesh(double places, double stepsAcross, Grain grain) {
        this.places = places;
        this.stepsAcross = stepsAcross;
        this.grain = grain;
    }

    Grain grain() {
        return grain;
    }

    /** Of the zones' lattice, in whole centimetres; never more than the enclosure is wide, deep or high. */
    double stepMetres(InnerSize size) {
        double volume = size.widthMetres() * size.depthMetres() * size.heightMetres();
        double even = Math.max(LEAST_METRES, Math.cbrt(volume / places));
        double whole = Math.ceil(even * CENTIMETRES - SLACK) / CENTIMETRES;
        return Math.min(whole, Math.min(size.widthMetres(), Math.min(size.depthMetres(), size.heightMetres())));
    }

    /** From half a step inside each wall. */
    Lattice lattice(InnerSize size) {
        double step = stepMetres(size);
        return new Lattice(
                new Vec(step / 2, step / 2, step / 2),
                step,
                count(size.widthMetres(), step),
                count(size.depthMetres(), step),
                count(size.heightMetres(), step));
    }

    private static int count(double sideMetres, double step) {
        return (int) Math.floor((sideMetres - step) / step + SLACK) + 1;
    }

    /** Of a plane that is drawn. */
    double drawnMetres(double acrossMetres, double upMetres) {
        return Math.max(acrossMetres, upMetres) / stepsAcross;
    }
}
