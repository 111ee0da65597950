package dapple.rig;

import dapple.enclosure.InnerSize;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Body;
import dapple.light.zone.ZoneTarget;
import java.util.Optional;

/**
 * Which zones a document asks for.
 *
 * @param size of the enclosure, which the grid spans
 * @param stepMetres of the grid
 * @param quantity one that the scene predicts
 * @param reachMetres of a ground dweller; empty for a climber
 */
public record ZoneQuestion(
        InnerSize size,
        double stepMetres,
        Quantity quantity,
        ZoneTarget target,
        Body body,
        Optional<Double> reachMetres) {}
