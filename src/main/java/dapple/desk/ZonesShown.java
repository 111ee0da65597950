package dapple.desk;

import dapple.drawing.ShareBar;
import dapple.light.survey.FoundZones;
import dapple.light.survey.FoundZones.ForBody;
import dapple.light.survey.FoundZones.OnSurface;
import dapple.light.survey.FoundZones.Patch;
import dapple.light.zone.ZoneTarget;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.prediction.SpeciesNeed;
import java.util.Optional;

/**
 * What an animal finds in an enclosure.
 *
 * @param ceiling of the species that is shown, UV index
 * @param patch the largest basking patch; empty: none
 * @param bodyMetres whom the patch is held against; empty: not known
 */
public record ZonesShown(
        double stepMetres,
        ShareBar bar,
        boolean within,
        Optional<FoundZones.Brightest> brightest,
        Optional<Double> ceiling,
        Optional<Patch> patch,
        boolean gradient,
        Optional<Double> bodyMetres) {
    public static Optional<ZonesShown> of(EnclosureScene scene, LightInside light) {
        return light.zones()
                .map(zones -> new ZonesShown(
                        zones.stepMetres(),
                        ShareBar.of(zones.found().shares(), zones.within()),
                        !zones.within().isEmpty(),
                        zones.found().brightest(),
                        scene.shown().flatMap(SpeciesNeed::zones).map(ZoneTarget::ceiling),
                        zones.found().onSurface().flatMap(OnSurface::patch),
                        zones.found().gradientPresent(),
                        scene.bodyMetres()));
    }

    /** The ceiling, if the prediction reaches it where an animal can be. */
    public Optional<Double> ceilingReached() {
        return ceiling.filter(
                limit -> brightest.filter(place -> place.amount() >= limit).isPresent());
    }

    /** What the patch is to the body; empty: there is no patch, or nobody's length is known. */
    public Optional<ForBody> body() {
        return patch.flatMap(Patch::body);
    }
}
