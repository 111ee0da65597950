package dapple.light.field;

import dapple.light.geometry.Bounds;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.List;

/** What stands between one place and one lamp, for one quantity: the solids and screens that can matter there. */
final class Paths {
    private final Solid[] allSolids;
    private final Screen[] allScreens;
    final Solid[] solids;
    final Screen[] screens;
    int solidCount;
    private boolean dark;
    int screenCount;
    Quantity quantity = Quantity.UV_INDEX;
    Vec place = Vec.UP;

    Paths(List<Solid> solids, List<Screen> screens) {
        this.allSolids = solids.toArray(new Solid[0]);
        this.allScreens = screens.toArray(new Screen[0]);
        this.solids = new Solid[allSolids.length];
        this.screens = new Screen[allScreens.length];
    }

    /** Chooses what can matter between a place and a lamp within a hull. */
    void choose(Vec from, Bounds lamp, List<Vec> hull, Quantity asked) {
        place = from;
        quantity = asked;
        dark = false;
        solidCount = 0;
        for (Solid solid : allSolids) {
            if (solid.bounds().meetsHullOf(lamp, from) && solid.canShade(from, hull)) {
                solids[solidCount++] = solid;
                dark = dark || hidesAll(solid, hull);
            }
        }
        screenCount = allScreens.length;
        System.arraycopy(allScreens, 0, screens, 0, screenCount);
    }

    /** What a convex solid hides is convex: it hides all that lies between corners that it hides. */
    private boolean hidesAll(Solid solid, List<Vec> hull) {
        for (int index = 0; index < hull.size(); index++) {
            if (!solid.blocks(place, hull.get(index))) {
                return false;
            }
        }
        return true;
    }

    /** Whether one solid hides the whole lamp. */
    boolean isDark() {
        return dark;
    }

    /** Whether each screen is crossed by the paths to all corners or to none. */
    boolean isEven(List<Vec> hull) {
        for (int index = 0; index < screenCount; index++) {
            boolean first = screens[index].isCrossed(place, hull.get(0));
            if (!first && screens[index].isLimited()) {
                return false;
            }
            for (int corner = 1; corner < hull.size(); corner++) {
                if (screens[index].isCrossed(place, hull.get(corner)) != first) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Nothing between: for a lamp alone, and for the value that a shaded one is measured by. */
    void clear(Vec from, Quantity asked) {
        place = from;
        quantity = asked;
        dark = false;
        solidCount = 0;
        screenCount = 0;
    }

    boolean isShaded() {
        return solidCount > 0;
    }

    /** Share of the light of one point that arrives. */
    double share(Vec source, Vec direction) {
        for (int index = 0; index < solidCount; index++) {
            if (solids[index].blocks(place, source)) {
                return 0;
            }
        }
        double share = 1;
        for (int index = 0; index < screenCount; index++) {
            if (screens[index].isCrossed(place, source)) {
                share *= screens[index].transmittance(quantity, direction);
            }
        }
        return share;
    }
}
