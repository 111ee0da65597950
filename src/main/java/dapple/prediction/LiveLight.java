package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones;
import dapple.light.survey.Needs;
import dapple.prediction.EnclosureScene.Cut;
import dapple.prediction.LightInside.Planes;
import dapple.rig.LeftOut;
import dapple.rig.RigScene;
import dapple.rig.SceneDocument;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;

/**
 * The light of a rig that is being changed: on every core, part by part, so that what does not follow
 * from a change is not computed anew.
 */
@Service
public class LiveLight {
    /** Of each part; a drawn enclosure takes about 150 kB. */
    private static final int MOST = 60;

    private final Lately<AtPoints, Map<String, Map<Quantity, Predicted>>> points = new Lately<>(MOST);
    private final Lately<OnPlanes, Optional<Planes>> planes = new Lately<>(MOST);
    private final Lately<InZones, Optional<FoundZones>> zones = new Lately<>(MOST);
    private final Hands hands;

    LiveLight(Hands hands) {
        this.hands = hands;
    }

    /**
     * The light of a scene, its zones by UV index.
     *
     * @param quantity of the planes
     * @param isRough while something is being moved: drawn, and looked at on resting places, on a coarser mesh
     */
    public LightInside of(EnclosureScene scene, Quantity quantity, boolean isRough) {
        Mesh mesh = isRough ? Mesh.ROUGH : Mesh.FINE;
        LightWork work = new LightWork(scene, Quantity.UV_INDEX, mesh, hands);
        LightWork drawn = new LightWork(scene, quantity, mesh, hands);
        Lit lit = Lit.by(scene.rig());
        Map<String, Map<Quantity, Predicted>> atPoints = points.get(new AtPoints(lit, scene.points()), work::atPoints);
        Optional<Cut> cut = scene.size().map(scene::cut);
        Optional<Needs> needs = scene.zones();
        return new LightInside(
                atPoints,
                planes.get(new OnPlanes(lit, scene.size(), cut, quantity, mesh), drawn::planes),
                zones.get(new InZones(lit, scene.size(), needs, mesh), work::zones)
                        .map(found -> work.within(found, atPoints)));
    }

    /**
     * What gives light and what stands in its way.
     *
     * @param document in full precision
     * @param uncertainties of the lamps' outputs, which the document does not name
     */
    private record Lit(String document, List<Map<Quantity, Double>> uncertainties, List<LeftOut> leftOut) {
        static Lit by(RigScene rig) {
            return new Lit(
                    SceneDocument.of(rig, List.of(), Optional.empty()), rig.relativeUncertainties(), rig.leftOut());
        }
    }

    private record AtPoints(Lit lit, List<PointFacts> points) {}

    private record OnPlanes(Lit lit, Optional<InnerSize> size, Optional<Cut> cut, Quantity quantity, Mesh mesh) {}

    private record InZones(Lit lit, Optional<InnerSize> size, Optional<Needs> needs, Mesh mesh) {}
}
