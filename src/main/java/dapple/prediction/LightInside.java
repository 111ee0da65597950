package dapple.prediction;

import dapple.drawing.LitPlane;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones;
import dapple.light.zone.Zone;
import java.util.Map;
import java.util.Optional;

/**
 * The light in an enclosure, as it is computed.
 *
 * @param atPoints by the point's code, then by quantity; what cannot be predicted is missing
 * @param planes empty without the enclosure’s size, or where the quantity that was asked for is not predicted
 * @param zones empty also without a target
 */
public record LightInside(
        Map<String, Map<Quantity, Predicted>> atPoints, Optional<Planes> planes, Optional<Zones> zones) {
    public Optional<Predicted> at(PointFacts point, Quantity quantity) {
        return Optional.ofNullable(atPoints.getOrDefault(point.code(), Map.of()).get(quantity));
    }

    /** The quantity that was asked for on a section and on a plan. */
    public record Planes(EnclosureScene.Cut cut, LitPlane section, LitPlane plan) {}

    /**
     * What an animal finds, by the quantity that was asked for.
     *
     * @param stepMetres between the places that were looked at
     * @param within what each share may be, as far as the prediction at the basking point is known; empty without one
     */
    public record Zones(double stepMetres, FoundZones found, Map<Zone, Interval> within) {}
}
