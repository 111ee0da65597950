package dapple.desk;

import dapple.check.Checks;
import dapple.desk.LightDrawings.Drawn;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import java.util.List;
import java.util.Optional;

/**
 * All that is computed of one rig.
 *
 * @param scene the enclosure under it
 * @param why of what is not shown
 * @param checks of the trade; empty while something is being moved
 * @param isPredicted whether the quantity that is drawn is known
 */
public record Look(
        EnclosureScene scene,
        Quantity quantity,
        Optional<Drawn> drawings,
        Optional<ZonesShown> found,
        List<Unpredicted> why,
        List<AtPoint> rows,
        Power power,
        Optional<Checks> checks,
        boolean isPredicted,
        boolean isLimited) {}
