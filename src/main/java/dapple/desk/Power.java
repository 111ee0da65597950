package dapple.desk;

import dapple.lamp.LampModelFacts;
import dapple.rig.Rig;
import java.util.List;
import java.util.Optional;

/**
 * What the lamps of a rig take.
 *
 * @param watts of those whose model says it
 * @param unknown lamps whose model does not
 */
public record Power(double watts, long unknown) {
    static Power of(Rig rig) {
        List<Optional<Double>> each = rig.fittings().stream()
                .map(fitting -> fitting.lamp().model())
                .map(LampModelFacts::watts)
                .toList();
        return new Power(
                each.stream()
                        .flatMap(Optional::stream)
                        .mapToDouble(Double::doubleValue)
                        .sum(),
                each.stream().filter(Optional::isEmpty).count());
    }
}
