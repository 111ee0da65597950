package dapple.desk;

import dapple.check.Checks;
import dapple.check.Known;
import dapple.check.TradeChecks;
import dapple.desk.LightDrawings.Shown;
import dapple.drawing.Grips;
import dapple.light.quantity.Quantity;
import dapple.people.SignedIn;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.prediction.LiveLight;
import dapple.prediction.Outlook;
import java.util.List;
import org.springframework.stereotype.Component;

/** Computes what a rig would give: nothing that was measured under another rig is on it. */
@Component
class Looking {
    private static final Newest UNREAD = new Newest(List.of());

    private final Outlook outlook;
    private final LiveLight live;
    private final LightDrawings drawings;
    private final DeskGrips grips;
    private final TradeChecks checks;

    Looking(Outlook outlook, LiveLight live, LightDrawings drawings, DeskGrips grips, TradeChecks checks) {
        this.outlook = outlook;
        this.live = live;
        this.drawings = drawings;
        this.grips = grips;
        this.checks = checks;
    }

    /**
     * A rig that is being changed.
     *
     * @param isRough while something is being moved
     */
    Look at(SignedIn me, EnclosureScene scene, Quantity quantity, boolean isRough) {
        LightInside light = live.of(scene, quantity, isRough);
        Known known = checks.known(me, scene);
        Checks checked = isRough ? checks.roughly(scene, light, known) : checks.of(scene, light, known);
        return look(scene, new Shown(quantity, light, light.planes()), grips.of(scene), new Judged(checked, isRough));
    }

    /** A rig that is looked at alone. */
    Look still(SignedIn me, EnclosureScene scene, Quantity quantity) {
        LightInside light = live.of(scene, quantity, false);
        Checks checked = checks.of(scene, light, checks.known(me, scene));
        return look(scene, new Shown(quantity, light, light.planes()), Grips.NONE, new Judged(checked, false));
    }

    private record Judged(Checks checks, boolean isRough) {}

    private Look look(EnclosureScene scene, Shown shown, Grips held, Judged judged) {
        Quantity quantity = shown.quantity();
        return new Look(
                scene,
                quantity,
                drawings.held(scene, shown, UNREAD, held),
                ZonesShown.of(scene, shown.light()),
                Unpredicted.of(scene),
                AtPoint.all(scene, shown.light(), quantity),
                Power.of(scene.rig().rig()),
                judged.checks(),
                judged.isRough(),
                scene.rig().quantities().contains(quantity),
                scene.shown().flatMap(need -> need.zones(quantity)).isPresent());
    }

    LightInside light(EnclosureScene scene) {
        return outlook.of(scene);
    }
}
