package dapple.desk;

import dapple.desk.Comparison.PointRow;
import dapple.desk.Comparison.Side;
import dapple.draft.DraftFacts;
import dapple.drawing.Drawing;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside.Planes;
import dapple.prediction.Outlook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;

/** Puts rigs of one enclosure side by side, each held against the first. */
@Component
class Comparing {
    private final Looking looking;
    private final Outlook outlook;
    private final LightDrawings drawings;

    Comparing(Looking looking, Outlook outlook, LightDrawings drawings) {
        this.looking = looking;
        this.outlook = outlook;
        this.drawings = drawings;
    }

    /**
     * The comparison.
     *
     * @param rigs two or three; empty: what hangs now
     */
    Comparison of(Desk desk, List<Optional<DraftFacts>> rigs, Quantity quantity) {
        List<EnclosureScene> scenes = rigs.stream()
                .map(draft -> draft.map(found -> desk.under(found.rig())).orElse(desk.installed()))
                .toList();
        List<Side> sides = new ArrayList<>();
        for (int number = 0; number < rigs.size(); number++) {
            EnclosureScene scene = scenes.get(number);
            sides.add(new Side(
                    rigs.get(number).map(DraftFacts::name),
                    rigs.get(number).map(DraftFacts::id),
                    looking.still(desk.me(), scene, quantity),
                    TargetLine.of(scene, looking.light(scene)),
                    number == 0 ? Optional.empty() : difference(scene, scenes.get(0), quantity)));
        }
        return new Comparison(sides, points(sides));
    }

    private Optional<Drawing> difference(EnclosureScene scene, EnclosureScene first, Quantity quantity) {
        Optional<Planes> before = outlook.planes(first, quantity);
        return outlook.planes(scene, quantity)
                .flatMap(after -> before.flatMap(base -> drawings.difference(scene, after, base, quantity)));
    }

    private static List<PointRow> points(List<Side> sides) {
        List<AtPoint> first = sides.get(0).look().rows();
        return IntStream.range(0, first.size())
                .mapToObj(row -> new PointRow(
                        first.get(row),
                        sides.stream().map(side -> side.look().rows().get(row)).toList()))
                .toList();
    }
}
