package dapple.desk;

import dapple.draft.DraftCover;
import dapple.draft.DraftRig;
import dapple.enclosure.Position;
import dapple.light.cover.Filter;
import dapple.light.design.CoverChoice;
import dapple.light.design.Frame;
import dapple.light.design.Way;
import dapple.light.field.Facing;
import dapple.light.field.Receiver;
import dapple.light.geometry.Bounds;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.rig.RigScene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The room that rigs are looked for in: cover and furniture of a draft, and the way along which light should fall. */
final class SearchRoom {
    private static final int MOST_LAYERED = 2;
    private static final int WAY_STEPS = 8;

    private final EnclosureScene scene;
    private final DraftRig draft;

    SearchRoom(EnclosureScene scene, DraftRig draft) {
        this.scene = scene;
        this.draft = draft;
    }

    Frame frame(Bounds within) {
        return new Frame(RigScene.ACCURACY, covers(), scene.rig().scene().solids(), Optional.of(within));
    }

    /** A mesh may get one layer more or less; none is taken away, since it may keep animals in. */
    private List<CoverChoice> covers() {
        List<CoverChoice> choices = new ArrayList<>();
        List<Filter> filters = scene.rig().scene().filters();
        List<DraftCover> seen = draft.covers().stream()
                .filter(cover -> cover.cover().heightMetres().isPresent())
                .toList();
        long layered = 0;
        for (int number = 0; number < seen.size(); number++) {
            String id = String.valueOf(draft.covers().indexOf(seen.get(number)));
            boolean isLayered = seen.get(number).cover().material().isMesh() && layered < MOST_LAYERED;
            layered += isLayered ? 1 : 0;
            choices.add(
                    isLayered
                            ? new CoverChoice(id, filters.get(number), layers(seen.get(number)))
                            : CoverChoice.staying(id, filters.get(number)));
        }
        return choices;
    }

    private static List<Integer> layers(DraftCover cover) {
        int now = cover.cover().layers();
        return IntStream.rangeClosed(Math.max(1, now - 1), Math.min(100, now + 1))
                .boxed()
                .toList();
    }

    /** From the basking point straight to the shade point, as far as nothing stands there. */
    Optional<Way> way() {
        Optional<Vec> shade = scene.points().stream()
                .filter(point -> point.role() == PointRole.SHADE)
                .flatMap(point -> point.position().stream())
                .map(SearchRoom::place)
                .findFirst();
        return scene.baskingPoint()
                .flatMap(point -> point.position())
                .map(SearchRoom::place)
                .flatMap(from -> shade.map(to -> steps(from, to)))
                .filter(receivers -> receivers.size() >= 3)
                .map(receivers -> new Way(Quantity.UV_INDEX, receivers));
    }

    private List<Receiver> steps(Vec from, Vec to) {
        return IntStream.rangeClosed(0, WAY_STEPS)
                .mapToObj(step -> from.plus(to.minus(from).times((double) step / WAY_STEPS)))
                .filter(place -> scene.rig().scene().solidAround(place) < 0)
                .map(place -> new Receiver(place, new Facing.Maximum()))
                .toList();
    }

    private static Vec place(Position at) {
        return new Vec(at.xMetres(), at.yMetres(), at.zMetres());
    }
}
