package dapple.lamp;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of {@link LampShape}, as they are chosen and stored. */
enum ShapeKind {
    LINE,
    CYLINDER,
    SPOT,
    DISC,
    PANEL,
    /** By a photometric file. */
    MEASURED;

    /** What may be chosen for a model: its file only where it has one. */
    static List<ShapeKind> choosable(Optional<LampShape> now) {
        return Arrays.stream(values())
                .filter(kind -> kind != MEASURED
                        || now.filter(LampShape.Measured.class::isInstance).isPresent())
                .toList();
    }
}
