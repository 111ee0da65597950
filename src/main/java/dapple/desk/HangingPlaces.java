package dapple.desk;

import dapple.enclosure.InnerSize;
import dapple.enclosure.Position;
import dapple.light.design.HangingPlace;
import dapple.light.geometry.Bounds;
import dapple.light.geometry.Vec;
import dapple.prediction.EnclosureScene;
import dapple.rig.CoverFacts;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where lamps may hang, in whole centimetres: over the basking point, where lamps hang, and over the enclosure in four columns
 * and two rows; on the lid and above it, or below the top where nothing lies over all of it. All steps are ours, no source.
 */
final class HangingPlaces {
    private static final int COLUMNS = 4;
    private static final int ROWS = 2;
    private static final List<Double> OVER_LID_METRES = List.of(0.02, 0.12, 0.30);
    private static final List<Double> BELOW_TOP_METRES = List.of(0.05, 0.20);

    /** Higher above an enclosure no lamp is proposed, m. */
    private static final double ABOVE_METRES = 0.6;

    private final EnclosureScene scene;
    private final InnerSize size;

    HangingPlaces(EnclosureScene scene, InnerSize size) {
        this.scene = scene;
        this.size = size;
    }

    /** Within which a lamp must lie from end to end. */
    Bounds room() {
        return new Bounds(
                new Vec(0, 0, 0), new Vec(size.widthMetres(), size.depthMetres(), size.heightMetres() + ABOVE_METRES));
    }

    /**
     * The places, the more likely ones first.
     *
     * @param lamps the middles of lamps that hang
     * @param most at most so many
     */
    List<HangingPlace> of(Collection<Vec> lamps, int most) {
        List<HangingPlace> places = new ArrayList<>();
        for (Vec at : spots(lamps)) {
            for (double height : heights(lamps)) {
                places.add(new HangingPlace("place " + places.size(), new Vec(at.x(), at.y(), height)));
            }
        }
        return places.stream().limit(most).toList();
    }

    /** Seen from above: the basking point, lamps, and a few over all of it. */
    List<Vec> spots(Collection<Vec> lamps) {
        List<Vec> spots = new ArrayList<>();
        scene.baskingPoint().flatMap(point -> point.position()).ifPresent(at -> spots.add(flat(at)));
        lamps.forEach(lamp -> spots.add(new Vec(rounded(lamp.x()), rounded(lamp.y()), 0)));
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                spots.add(new Vec(
                        rounded(InReach.middle(0, size.widthMetres(), column, COLUMNS)),
                        rounded(InReach.middle(0, size.depthMetres(), row, ROWS)),
                        0));
            }
        }
        return spots.stream().distinct().toList();
    }

    private static Vec flat(Position at) {
        return new Vec(rounded(at.xMetres()), rounded(at.yMetres()), 0);
    }

    private List<Double> heights(Collection<Vec> lamps) {
        double lid = InReach.lid(scene, size);
        boolean isCovered = scene.rig().rig().covers().stream()
                .map(CoverFacts::cover)
                .anyMatch(cover -> cover.over().isEmpty());
        Stream<Double> usual = isCovered
                ? OVER_LID_METRES.stream().map(above -> lid + above)
                : BELOW_TOP_METRES.stream().map(below -> size.heightMetres() - below);
        return Stream.concat(lamps.stream().map(Vec::z).limit(2), usual)
                .map(HangingPlaces::rounded)
                .filter(height -> height > 0)
                .distinct()
                .toList();
    }

    private static double rounded(double metres) {
        return Math.rint(metres * 100) / 100;
    }
}
