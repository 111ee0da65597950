package dapple.desk;

import dapple.enclosure.PointFacts;
import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightInside;
import dapple.prediction.Predicted;
import java.util.List;
import java.util.Optional;

/**
 * What a rig is predicted to give at a point, held against what the species that is shown needs there.
 *
 * @param predicted empty: not known
 * @param band asked for there; empty: nothing
 * @param state as predicted; empty: nothing is asked, or not enough is known
 */
public record AtPoint(
        PointFacts point,
        Quantity quantity,
        Optional<Predicted> predicted,
        Optional<Band> band,
        Optional<State> state) {
    static List<AtPoint> all(EnclosureScene scene, LightInside light, Quantity quantity) {
        return scene.points().stream()
                .map(point -> at(scene, light.at(point, quantity), point, quantity))
                .toList();
    }

    private static AtPoint at(
            EnclosureScene scene, Optional<Predicted> predicted, PointFacts point, Quantity quantity) {
        Optional<Limits> limits = point.role() == PointRole.KEEPER
                ? Optional.empty()
                : scene.shown().filter(need -> scene.serves(point, need)).flatMap(need -> need.limits(quantity));
        return new AtPoint(
                point,
                quantity,
                predicted,
                limits.map(found -> found.at(point.role())).filter(band -> !band.isOpen()),
                limits.flatMap(found -> predicted.flatMap(amount -> state(found, point.role(), amount))));
    }

    /** A least amount can be too much, but never enough. */
    private static Optional<State> state(Limits limits, PointRole role, Predicted predicted) {
        State state = state(limits, limits.at(role), predicted);
        return predicted.isWhole() || state == State.OVER_CEILING || state == State.TOO_STRONG
                ? Optional.of(state).filter(found -> !limits.at(role).isOpen())
                : Optional.empty();
    }

    private static State state(Limits limits, Band band, Predicted predicted) {
        if (predicted.amount() > limits.ceiling()) {
            return State.OVER_CEILING;
        }
        State state = band.of(new MeasuredAmount(predicted.amount(), predicted.interval()));
        boolean mayExceed = predicted.interval().high() > limits.ceiling();
        return mayExceed && State.BORDERLINE.isGraverThan(state) ? State.BORDERLINE : state;
    }
}
