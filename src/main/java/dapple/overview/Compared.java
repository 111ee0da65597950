package dapple.overview;

import dapple.desk.Newest;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.prediction.Predicted;
import dapple.reading.JudgedReading;
import dapple.rig.RigScene;
import dapple.site.Settings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A quantity at a point, measured and predicted.
 *
 * @param band what the species that is shown asks there; empty: nothing
 * @param ratio measured over predicted; empty where one of them is missing, or what is predicted rounds to nothing
 * @param doubtful whether the ratio needs a notice
 * @param lightChanged when the light changed after it was measured, if it did; then there is no ratio
 */
record Compared(
        PointFacts point,
        Quantity quantity,
        Optional<JudgedReading> measured,
        Optional<Predicted> predicted,
        Optional<Band> band,
        Optional<Double> ratio,
        boolean doubtful,
        Optional<Instant> lightChanged) {
    /** Below it a meter of tenths shows nothing; a ratio would be noise (ours, no source). */
    private static final double LEAST_UV_INDEX = 0.1;

    /** In the order of the walk; what is neither measured nor predicted nor asked is left out. */
    static List<Compared> rows(EnclosureScene scene, LightInside light, ReadSince read, Settings settings) {
        Newest newest = read.newest();
        return scene.points().stream()
                .flatMap(point -> RigScene.LIGHT.stream()
                        .flatMap(quantity -> row(
                                read,
                                light.at(point, quantity),
                                newest.at(point, quantity),
                                point,
                                quantity,
                                settings)))
                .toList();
    }

    private static Stream<Compared> row(
            ReadSince read,
            Optional<Predicted> predicted,
            Optional<JudgedReading> measured,
            PointFacts point,
            Quantity quantity,
            Settings settings) {
        if (predicted.isEmpty() && measured.isEmpty() && !point.quantities().contains(quantity)) {
            return Stream.empty();
        }
        Optional<Instant> lightChanged = measured.flatMap(read::lightChangedSince);
        Optional<Double> ratio = measured.filter(of -> lightChanged.isEmpty())
                .flatMap(of -> predicted
                        .filter(found -> isEnough(quantity, found))
                        .map(found -> of.amount() / found.amount()));
        return Stream.of(new Compared(
                point,
                quantity,
                measured,
                predicted,
                band(read.scene(), point, quantity),
                ratio,
                ratio.filter(settings::isDoubtful).isPresent(),
                lightChanged));
    }

    private static boolean isEnough(Quantity quantity, Predicted predicted) {
        return predicted.isWhole() && predicted.amount() >= (quantity == Quantity.UV_INDEX ? LEAST_UV_INDEX : 1);
    }

    private static Optional<Band> band(EnclosureScene scene, PointFacts point, Quantity quantity) {
        return scene.shown()
                .filter(need -> scene.serves(point, need))
                .flatMap(need -> need.limits(quantity))
                .map((Limits limits) -> limits.at(point.role()))
                .filter(band -> !band.isOpen());
    }
}
