package dapple.check;

import dapple.rig.CoverFacts;
import dapple.rig.FittingFacts;
import dapple.rig.FurnitureFacts;
import dapple.rig.Rig;

/** Whether a lamp would hang far enough from what may burn, melt or scorch. */
public final class FireClearance {
    private FireClearance() {}

    /** Not where its place, its shape or the height of a cover is not known. */
    public static boolean isKept(FittingFacts fitting, Rig rig) {
        FireDistance asked = FireDistance.of(fitting.lamp().model().lampClass());
        return LampBody.of(fitting)
                .filter(body -> rig.furniture().stream()
                        .map(FurnitureFacts::furniture)
                        .allMatch(item -> body.distance(item.shape()) >= asked.furnitureMetres()))
                .filter(body -> asked.coverMetres().isEmpty()
                        || rig.covers().stream()
                                .allMatch(cover ->
                                        isFar(body, cover, asked.coverMetres().get())))
                .isPresent();
    }

    private static boolean isFar(LampBody body, CoverFacts facts, double leastMetres) {
        return facts.cover()
                .heightMetres()
                .filter(height -> body.distance(facts.cover(), height) >= leastMetres)
                .isPresent();
    }
}
