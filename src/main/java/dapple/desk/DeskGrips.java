package dapple.desk;

import dapple.drawing.Grips;
import dapple.drawing.Grips.Grip;
import dapple.enclosure.PointFacts;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.source.Lamp;
import dapple.prediction.EnclosureScene;
import dapple.rig.FittingFacts;
import dapple.rig.Furniture;
import dapple.rig.FurnitureShape;
import dapple.rig.Rig;
import dapple.site.Formats;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Names what can be taken hold of in the drawings of a desk: as the form calls it, and in words with its place. */
@Component
class DeskGrips {
    private final Formats formats;
    private final MessageSource messages;

    DeskGrips(Formats formats, MessageSource messages) {
        this.formats = formats;
        this.messages = messages;
    }

    /** Of a scene whose rig has its parts in the order of the form. */
    Grips of(EnclosureScene scene) {
        Rig rig = scene.rig().rig();
        return new Grips(
                scene.rig().scene().lamps().stream()
                        .map(lamp -> lamp(lamp, rig.fittings()))
                        .toList(),
                IntStream.range(0, rig.furniture().size())
                        .mapToObj(index ->
                                furniture(index, rig.furniture().get(index).furniture()))
                        .toList(),
                IntStream.range(0, scene.points().size())
                        .filter(index -> isDrawn(scene.points().get(index)))
                        .mapToObj(index -> point(index, scene.points().get(index)))
                        .toList());
    }

    private static boolean isDrawn(PointFacts point) {
        return point.role() != PointRole.KEEPER && point.position().isPresent();
    }

    /** Some lamps are not in the scene, so that their order there is not that of the form. */
    private Grip lamp(Lamp lamp, List<FittingFacts> fittings) {
        int number = IntStream.range(0, fittings.size())
                .filter(index -> fittings.get(index).lamp().tag().equals(lamp.id()))
                .findFirst()
                .orElseThrow();
        return grip("lamps", number, "desk.grip.lamp", lamp.id(), lamp.centre());
    }

    private Grip furniture(int number, Furniture item) {
        return grip("furniture", number, "desk.grip.furniture", item.name(), begin(item.shape()));
    }

    /** Where the fields of the form say it is. */
    private static Vec begin(FurnitureShape shape) {
        if (shape instanceof FurnitureShape.Block block) {
            return block.least();
        }
        return shape instanceof FurnitureShape.Post post ? post.base() : ((FurnitureShape.Branch) shape).from();
    }

    private Grip point(int number, PointFacts point) {
        Vec place = point.position()
                .map(at -> new Vec(at.xMetres(), at.yMetres(), at.zMetres()))
                .orElseThrow();
        return grip("points", number, "desk.grip.point", point.code(), place);
    }

    private Grip grip(String kind, int number, String key, String name, Vec place) {
        Object[] said = {name, formats.metres(place.x()), formats.metres(place.y()), formats.metres(place.z())};
        return new Grip(kind + "[" + number + "]", messages.getMessage(key, said, Locale.UK));
    }
}
