package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.geometry.Hull;
import dapple.light.geometry.Shade;
import dapple.light.geometry.ShadowBounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.List;

/**
 * What stands between one lamp and one place after the other, for one quantity: the solids that can matter there, and the
 * filters, sorted by whether all paths cross them or some, and whether all paths lose alike.
 */
final class Paths {
    private final Hull hull;
    private final List<ShadowBounds> bounds;
    private final Shade[] allShades;
    private final double[] thicknesses;
    private final Screen[] allScreens;
    final Shade[] shades;
    int shadeCount;

    /** Filters that all paths cross and that pass less at a slant. */
    final Screen[] slanted;

    int slantedCount;

    /** Filters that some paths cross. */
    final Screen[] partial;

    int partialCount;

    /** What the filters pass that all paths cross alike. */
    double share;

    Vec place = Vec.UP;
    Quantity quantity = Quantity.UV_INDEX;
    private int forgotten;
    private boolean dark;
    private double thinnest;

    /**
     * Paths to a lamp.
     *
     * @param bounds of what each solid may hide of the lamp, in the order of the solids
     */
    Paths(Hull hull, List<Solid> solids, List<ShadowBounds> bounds, List<Filter> filters) {
        this.hull = hull;
        this.bounds = bounds;
        this.allShades = solids.stream().map(Solid::shade).toArray(Shade[]::new);
        this.thicknesses =
                solids.stream().mapToDouble(solid -> solid.hull().thickness()).toArray();
        this.allScreens =
                filters.stream().map(filter -> new Screen(filter, hull)).toArray(Screen[]::new);
        this.shades = new Shade[allShades.length];
        this.slanted = new Screen[allScreens.length];
        this.partial = new Screen[allScreens.length];
    }

    /** Chooses what can matter at a place. */
    void choose(Vec from, Quantity asked) {
        place = from;
        quantity = asked;
        chooseShades();
        chooseScreens();
    }

    private void chooseShades() {
        dark = false;
        shadeCount = 0;
        thinnest = Double.POSITIVE_INFINITY;
        for (int index = 0; index < allShades.length; index++) {
            if (bounds.get(index).mayHide(place)) {
                Shade shade = allShades[index];
                shade.lookFrom(place);
                if (!shade.sparesAll(hull)) {
                    dark = dark || shade.hidesAll(hull);
                    shades[shadeCount++] = shade;
                    thinnest = Math.min(thinnest, thicknesses[index]);
                }
            }
        }
    }

    private void chooseScreens() {
        share = 1;
        slantedCount = 0;
        partialCount = 0;
        for (Screen screen : allScreens) {
            Screen.Crossing crossing = screen.crossing(place);
            if (crossing == Screen.Crossing.SOME) {
                partial[partialCount++] = screen;
            } else if (crossing == Screen.Crossing.ALL) {
                if (screen.isAlikeAtEveryAngle()) {
                    share *= screen.share(quantity);
                } else {
                    slanted[slantedCount++] = screen;
                }
            }
        }
    }

    /** Whether one solid hides the whole lamp, or a filter passes nothing. */
    boolean isDark() {
        return dark || !(share > 0);
    }

    /** The least thickness of the solids that can matter, m; infinite without any. */
    double thinnest() {
        return thinnest;
    }

    boolean isShaded() {
        return shadeCount > 0;
    }

    /** Whether every path loses alike, but for the angle. */
    boolean isEven() {
        return shadeCount == 0 && partialCount == 0;
    }

    /** Forgets the solids, to learn what would arrive without them. */
    void forgetSolids() {
        forgotten = shadeCount;
        shadeCount = 0;
    }

    void recallSolids() {
        shadeCount = forgotten;
    }

    /** Share of the light of one point that arrives, but for the filters that all paths lose alike in. */
    double ofPoint(Vec source, double x, double y, double z) {
        for (int index = 0; index < shadeCount; index++) {
            if (shades[index].hides(source)) {
                return 0;
            }
        }
        double passed = 1;
        for (int index = 0; index < slantedCount; index++) {
            passed *= slanted[index].transmittance(quantity, x, y, z);
        }
        for (int index = 0; index < partialCount; index++) {
            if (partial[index].isCrossed(place, source)) {
                passed *= partial[index].transmittance(quantity, x, y, z);
            }
        }
        return passed;
    }
}
