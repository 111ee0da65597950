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
 * @param checks of the trade, by the same light
 * @param isRough while something is being moved: light and checks on a coarser mesh
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
        Checks checks,
        boolean isRough,
        boolean isPredicted,
        boolean isLimited) {}
