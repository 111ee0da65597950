package dapple.light.zone;

import dapple.light.geometry.Vec;
import java.util.List;

/**
 * The places at which a resting surface is looked at, u fastest, edge to edge. Their step is usually a hundredth of the
 * body's length or a fortieth of the shorter side, whichever is less, and larger only where that would be more than half a
 * million places. Where the surface leans in x and y at once its outline is no rectangle, and places beyond it belong to nothing.
 */
public final class SurfaceLattice {
    /** Of one surface: a setting of ours. */
    private static final double MOST_PLACES = 500_000;

    /** Places lie this far over the plane, so that rounding does not put them under it: 1 µm. */
    private static final double LIFT_METRES = 1e-6;

    private static final double COARSER = 1.05;

    private final RestingSurface surface;
    private final Vec along;
    private final Vec across;
    private final Vec corner;
    private final Sheet sheet;

    private SurfaceLattice(RestingSurface surface, double bodyLengthMetres, Grain grain) {
        this.surface = surface;
        Vec normal = surface.normal();
        this.along = new Vec(normal.z(), 0, -normal.x())
                .times(Math.signum(normal.z()))
                .unit();
        this.across = normal.cross(along);
        List<Vec> corners = corners(surface);
        double lowU = least(corners, along);
        double lowV = least(corners, across);
        double sideU = -least(corners, along.times(-1)) - lowU;
        double sideV = -least(corners, across.times(-1)) - lowV;
        this.corner = surface.point().plus(along.times(lowU)).plus(across.times(lowV));
        this.sheet = sheet(sideU, sideV, grain.stepMetres(Math.min(sideU, sideV), bodyLengthMetres));
    }

    /**
     * The lattice of a surface.
     *
     * @param bodyLengthMetres above 0, infinite where nobody's size is known
     */
    public static SurfaceLattice of(RestingSurface surface, double bodyLengthMetres) {
        return of(surface, bodyLengthMetres, Grain.FINE);
    }

    /** The same, looked at more or less finely. */
    public static SurfaceLattice of(RestingSurface surface, double bodyLengthMetres, Grain grain) {
        return new SurfaceLattice(surface, bodyLengthMetres, grain);
    }

    private static List<Vec> corners(RestingSurface surface) {
        var within = surface.within();
        return List.of(
                surface.at(within.lowX(), within.lowY()).minus(surface.point()),
                surface.at(within.highX(), within.lowY()).minus(surface.point()),
                surface.at(within.lowX(), within.highY()).minus(surface.point()),
                surface.at(within.highX(), within.highY()).minus(surface.point()));
    }

    private static double least(List<Vec> ways, Vec direction) {
        return ways.stream().mapToDouble(direction::dot).min().orElseThrow();
    }

    private static Sheet sheet(double sideU, double sideV, double wantedMetres) {
        double step = Math.max(wantedMetres, Math.sqrt(sideU) * Math.sqrt(sideV) / Math.sqrt(MOST_PLACES));
        while ((cells(sideU, step) + 1) * (cells(sideV, step) + 1) > MOST_PLACES) {
            step *= COARSER;
        }
        int cellsU = (int) cells(sideU, step);
        int cellsV = (int) cells(sideV, step);
        return new Sheet(cellsU + 1, cellsV + 1, sideU / cellsU, sideV / cellsV);
    }

    /** A whole number of the coarsest cells. */
    private static double cells(double side, double step) {
        return SurfaceLight.COARSEST * Math.ceil(side / (SurfaceLight.COARSEST * step));
    }

    Sheet sheet() {
        return sheet;
    }

    RestingSurface surface() {
        return surface;
    }

    public int size() {
        return sheet.size();
    }

    /** Where the light at an index is looked at. */
    public Vec place(int index) {
        return onPlane(index).plus(surface.normal().times(LIFT_METRES));
    }

    Vec onPlane(int index) {
        return corner.plus(along.times(sheet.u(index) * sheet.stepU()))
                .plus(across.times(sheet.v(index) * sheet.stepV()));
    }

    /** Whether the place at an index lies on the surface. */
    boolean isOn(int index) {
        return surface.isOver(onPlane(index));
    }

    /** The larger of the two steps, m. */
    public double stepMetres() {
        return Math.max(sheet.stepU(), sheet.stepV());
    }
}
