package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.light.geometry.Vec;
import dapple.light.zone.Lattice;

/** How finely an enclosure is looked at: coarse enough to be computed while somebody waits; steps are ours, no source. */
final class Mesh {
    /** About so many places share the room for zones. */
    private static final double PLACES = 2000;

    private static final double LEAST_METRES = 0.02;
    private static final double CENTIMETRES = 100;

    /** Along its longer side a drawing has so many steps. */
    private static final double STEPS_ACROSS = 48;

    /** Share of a step by which the last place may lie beyond the end, for the sake of decimals such as 0.1. */
    private static final double SLACK = 1e-6;

    private Mesh() {}

    /** Of the zones' lattice, in whole centimetres; never more than the enclosure is wide, deep or high. */
    static double stepMetres(InnerSize size) {
        double volume = size.widthMetres() * size.depthMetres() * size.heightMetres();
        double even = Math.max(LEAST_METRES, Math.cbrt(volume / PLACES));
        double whole = Math.ceil(even * CENTIMETRES - SLACK) / CENTIMETRES;
        return Math.min(whole, Math.min(size.widthMetres(), Math.min(size.depthMetres(), size.heightMetres())));
    }

    /** From half a step inside each wall. */
    static Lattice lattice(InnerSize size) {
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
    static double drawnMetres(double acrossMetres, double upMetres) {
        return Math.max(acrossMetres, upMetres) / STEPS_ACROSS;
    }
}
