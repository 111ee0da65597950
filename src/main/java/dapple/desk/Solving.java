package dapple.desk;

import dapple.desk.Answered.Height;
import dapple.desk.Answered.Heights;
import dapple.desk.Answered.Layers;
import dapple.desk.Answered.Missed;
import dapple.desk.Answered.Not;
import dapple.draft.DraftCover;
import dapple.draft.DraftRig;
import dapple.enclosure.InnerSize;
import dapple.light.design.AmountAtHeight;
import dapple.light.design.HeightAnswer;
import dapple.light.design.HeightSolver;
import dapple.light.design.HeightTask;
import dapple.light.design.LayersAnswer;
import dapple.light.design.LayersTask;
import dapple.light.field.Receiver;
import dapple.light.judging.Band;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.prediction.EnclosureScene;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;

/** Answers questions about a draft by the engine, and says what each answer does. */
@Component
class Solving {
    /** As many layers of a cover are looked at: common practice, no source. */
    private static final int MOST_LAYERS = 6;

    /** Lamps are looked for up to so much above an enclosure, m (ours). */
    private static final double ABOVE_METRES = 1;

    /** Nearer to the floor, or above the place, no lamp is hung, m (ours). */
    private static final double NEAREST_METRES = 0.05;

    private final Looking looking;

    Solving(Looking looking) {
        this.looking = looking;
    }

    /** Of what is asked. */
    record On(Desk desk, DraftRig rig) {
        EnclosureScene scene() {
            return desk.under(rig);
        }
    }

    /** Where an amount is wanted. */
    record Spot(Receiver receiver, Quantity quantity) {}

    Answered height(On on, int lamp, Spot spot, double wanted) {
        EnclosureScene scene = on.scene();
        String tag = tag(scene, lamp);
        Optional<Lamp> hung = hung(scene, tag);
        Optional<Not> not = unpredicted(scene, spot.quantity());
        if (hung.isEmpty() || not.isPresent()) {
            return not.orElseGet(() -> new Not("desk.solve.not.lamp", List.of(tag)));
        }
        if (hung.get().outputs().stream().noneMatch(output -> output.quantity() == spot.quantity())) {
            return new Not("desk.solve.not.gives", List.of(tag));
        }
        HeightTask task = new HeightTask(
                scene.rig().scene(), tag, spot.receiver(), spot.quantity(), heights(scene, hung.get(), spot));
        HeightAnswer answer = HeightSolver.solve(task, wanted);
        if (answer instanceof HeightAnswer.Met met) {
            List<Height> all = met.heights().stream()
                    .map(found -> height(on, lamp, found, spot.quantity()))
                    .toList();
            return new Heights(tag, lamp, spot.quantity(), wanted, all, Optional.empty());
        }
        return new Heights(tag, lamp, spot.quantity(), wanted, List.of(), Optional.of(missed(answer)));
    }

    private static Interval heights(EnclosureScene scene, Lamp lamp, Spot spot) {
        double low = Math.max(0, spot.receiver().place().z()) + NEAREST_METRES;
        double top =
                scene.size().map(InnerSize::heightMetres).orElse(lamp.centre().z());
        return new Interval(low, Math.max(low, top + ABOVE_METRES));
    }

    private static Missed missed(HeightAnswer answer) {
        return answer instanceof HeightAnswer.OutOfReach out
                ? new Missed(Optional.of(out.least()), Optional.of(out.most()), out.leapAtMetres())
                : new Missed(Optional.empty(), Optional.empty(), Optional.empty());
    }

    private Height height(On on, int lamp, AmountAtHeight found, Quantity quantity) {
        return new Height(found, effect(on, DraftWith.height(on.rig(), lamp, Height.metres(found)), Set.of(quantity)));
    }

    /** What a change of the draft does. */
    Effect effect(On on, DraftRig after, Set<Quantity> quantities) {
        return Effect.between(lit(on.scene()), lit(on.desk().under(after)), quantities);
    }

    private Effect.Lit lit(EnclosureScene scene) {
        return new Effect.Lit(scene, looking.light(scene));
    }

    static String tag(EnclosureScene scene, int lamp) {
        return scene.rig().rig().fittings().get(lamp).lamp().tag();
    }

    static Optional<Lamp> hung(EnclosureScene scene, String tag) {
        return scene.rig().scene().lamps().stream()
                .filter(lamp -> lamp.id().equals(tag))
                .findFirst();
    }

    private static Optional<Not> unpredicted(EnclosureScene scene, Quantity quantity) {
        return scene.rig().quantities().contains(quantity)
                ? Optional.empty()
                : Optional.of(new Not("desk.solve.not.quantity", List.of()));
    }

    Answered layers(On on, int cover, Spot spot, Band band) {
        EnclosureScene scene = on.scene();
        DraftCover asked = on.rig().covers().get(cover);
        String name = asked.cover().name();
        Optional<Not> not = unpredicted(scene, spot.quantity());
        if (not.isPresent()) {
            return not.get();
        }
        LayersTask task = new LayersTask(
                scene.rig().scene(), filter(on.rig(), cover), 0, MOST_LAYERS, spot.receiver(), spot.quantity());
        LayersAnswer answer = LayersAnswer.of(task, band);
        DraftRig after = DraftWith.layers(on.rig(), cover, answer.best().layers());
        return new Layers(
                name,
                cover,
                asked.cover().layers(),
                spot.quantity(),
                band,
                answer.isMet(),
                answer.best(),
                answer.all(),
                effect(on, after, Set.of(spot.quantity())));
    }

    /** The number of a cover among those that the engine sees, which are those whose height is known. */
    private static int filter(DraftRig rig, int cover) {
        return (int) rig.covers().stream()
                .limit(cover)
                .filter(one -> one.cover().heightMetres().isPresent())
                .count();
    }
}
