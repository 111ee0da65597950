package dapple.desk;

import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Source;
import dapple.rig.Mount;
import java.util.Optional;

/** How a lamp of the engine hangs. */
final class LampMount {
    private LampMount() {}

    static Mount of(Lamp lamp) {
        return new Mount(lamp.centre(), lamp.aim(), along(lamp.source()));
    }

    private static Optional<Vec> along(Source source) {
        if (source instanceof Source.Line line) {
            return Optional.of(line.along());
        }
        if (source instanceof Source.Cylinder tube) {
            return Optional.of(tube.along());
        }
        return source instanceof Source.Rectangle panel ? Optional.of(panel.along()) : Optional.empty();
    }
}
