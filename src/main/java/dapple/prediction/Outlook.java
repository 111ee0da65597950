package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.quantity.Quantity;
import dapple.light.survey.Needs;
import dapple.prediction.EnclosureScene.Cut;
import dapple.rig.LeftOut;
import dapple.rig.RigScene;
import dapple.rig.SceneDocument;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Computes the light in enclosures, and remembers it as long as nothing that it follows from has changed. */
@Service
public class Outlook {
    /** A drawn enclosure takes about 150 kB. */
    private static final int MOST = 200;

    private final Lately<Question, LightInside> lately = new Lately<>(MOST);

    private final Lately<Drawn, Optional<LightInside.Planes>> drawn = new Lately<>(MOST);

    private final Lately<Drawn, LightInside> plain = new Lately<>(MOST);

    public LightInside of(EnclosureScene scene) {
        return lately.get(Question.about(scene), () -> new LightWork(scene).done());
    }

    /** Another quantity on the planes that are drawn; empty without the enclosure's size, or where it is not predicted. */
    public Optional<LightInside.Planes> planes(EnclosureScene scene, Quantity quantity) {
        return quantity == Quantity.UV_INDEX
                ? of(scene).planes()
                : drawn.get(new Drawn(Question.about(scene), quantity), () -> new LightWork(scene, quantity).planes());
    }

    /** The light at the points and on the planes that are drawn, without the zones: these are most of the work. */
    public LightInside withoutZones(EnclosureScene scene, Quantity quantity) {
        return plain.get(new Drawn(Question.about(scene), quantity), () -> {
            LightWork work = new LightWork(scene, quantity);
            return new LightInside(work.atPoints(), work.planes(), Optional.empty());
        });
    }

    private record Drawn(Question question, Quantity quantity) {}

    /**
     * All that the light follows from.
     *
     * @param document the scene with its receivers, in full precision
     * @param uncertainties of the lamps' outputs, which the document does not name
     * @param baskingPoint whose prediction bounds the shares
     */
    private record Question(
            String document,
            List<Map<Quantity, Double>> uncertainties,
            List<LeftOut> leftOut,
            Optional<InnerSize> size,
            Optional<Cut> cut,
            Optional<Needs> needs,
            Optional<String> baskingPoint) {
        static Question about(EnclosureScene scene) {
            RigScene rig = scene.rig();
            return new Question(
                    SceneDocument.of(rig, scene.points(), Optional.empty()),
                    rig.relativeUncertainties(),
                    rig.leftOut(),
                    scene.size(),
                    scene.size().map(scene::cut),
                    scene.zones(),
                    scene.baskingPoint().map(PointFacts::code));
        }
    }
}
