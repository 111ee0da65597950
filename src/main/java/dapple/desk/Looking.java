package dapple.desk;

import dapple.desk.LightDrawings.Shown;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.prediction.Outlook;
import java.util.List;
import org.springframework.stereotype.Component;

/** Computes what a rig would give: nothing that was measured under another rig is on it. */
@Component
class Looking {
    private static final Newest UNREAD = new Newest(List.of());

    private final Outlook outlook;
    private final LightDrawings drawings;

    Looking(Outlook outlook, LightDrawings drawings) {
        this.outlook = outlook;
        this.drawings = drawings;
    }

    Look at(EnclosureScene scene, Quantity quantity) {
        LightInside light = outlook.of(scene);
        Shown shown = new Shown(quantity, light, outlook.planes(scene, quantity));
        return new Look(
                scene,
                quantity,
                drawings.of(scene, shown, UNREAD),
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
