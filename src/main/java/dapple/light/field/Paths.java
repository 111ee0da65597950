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
    int screenCount;
    Quantity quantity = Quantity.UV_INDEX;
    Vec place = Vec.UP;

    Paths(List<Solid> solids, List<Screen> screens) {
        this.allSolids = solids.toArray(new Solid[0]);
        this.allScreens = screens.toArray(new Screen[0]);
        this.solids = new Solid[allSolids.length];
        this.screens = new Screen[allScreens.length];
    }

    /** Chooses what can matter between a place and a lamp within bounds. */
    void choose(Vec from, Bounds lamp, Quantity asked) {
        place = from;
        quantity = asked;
        solidCount = 0;
        for (Solid solid : allSolids) {
            if (solid.bounds().meetsHullOf(lamp, from)) {
                solids[solidCount++] = solid;
            }
        }
        screenCount = allScreens.length;
        System.arraycopy(allScreens, 0, screens, 0, screenCount);
    }

    /** Nothing between: for a lamp alone, and for the value that a shaded one is measured by. */
    void clear(Vec from, Quantity asked) {
        place = from;
        quantity = asked;
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
