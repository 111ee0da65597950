package dapple.desk;

import dapple.desk.LightDrawings.Shown;
import dapple.drawing.Grips;
import dapple.light.quantity.Quantity;
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

    Looking(Outlook outlook, LiveLight live, LightDrawings drawings, DeskGrips grips) {
        this.outlook = outlook;
        this.live = live;
        this.drawings = drawings;
        this.grips = grips;
    }

    /**
     * A rig that is being changed.
     *
     * @param isRough while something is being moved
     */
    Look at(EnclosureScene scene, Quantity quantity, boolean isRough) {
        return look(scene, quantity, live.of(scene, quantity, isRough), grips.of(scene));
    }

    /** A rig that is looked at alone. */
    Look still(EnclosureScene scene, Quantity quantity) {
        return look(scene, quantity, live.of(scene, quantity, false), Grips.NONE);
    }

    private Look look(EnclosureScene scene, Quantity quantity, LightInside light, Grips held) {
        Shown shown = new Shown(quantity, light, light.planes());
        return new Look(
                scene,
                quantity,
                drawings.held(scene, shown, UNREAD, held),
                ZonesShown.of(scene, light),
                Unpredicted.of(scene),
                AtPoint.all(scene, light, quantity),
                Power.of(scene.rig().rig()),
                scene.rig().quantities().contains(quantity),
                scene.shown().flatMap(need -> need.zones(quantity)).isPresent());
    }

    LightInside light(EnclosureScene scene) {
        return outlook.of(scene);
    }
}
