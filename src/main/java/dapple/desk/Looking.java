package dapple.desk;

import dapple.check.Checks;
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
import java.util.Optional;
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
        return look(scene, quantity, light, grips.of(scene), isRough ? Optional.empty() : checks(me, scene, light));
    }

    /** A rig that is looked at alone. */
    Look still(SignedIn me, EnclosureScene scene, Quantity quantity) {
        LightInside light = live.of(scene, quantity, false);
        return look(scene, quantity, light, Grips.NONE, checks(me, scene, light));
    }

    private Optional<Checks> checks(SignedIn me, EnclosureScene scene, LightInside light) {
        return Optional.of(checks.of(scene, light, checks.known(me, scene)));
    }

    private Look look(
            EnclosureScene scene, Quantity quantity, LightInside light, Grips held, Optional<Checks> checked) {
        Shown shown = new Shown(quantity, light, light.planes());
        return new Look(
                scene,
                quantity,
                drawings.held(scene, shown, UNREAD, held),
                ZonesShown.of(scene, light),
                Unpredicted.of(scene),
                AtPoint.all(scene, light, quantity),
                Power.of(scene.rig().rig()),
                checked,
                scene.rig().quantities().contains(quantity),
                scene.shown().flatMap(need -> need.zones(quantity)).isPresent());
    }

    LightInside light(EnclosureScene scene) {
        return outlook.of(scene);
    }
}
