package dapple.lamp;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.validation.Errors;

/** Which measures each shape of a lamp needs and may have. */
final class ShapeRules {
    private static final List<String> MEASURES =
            List.of("lengthMetres", "widthMetres", "radiusMetres", "beamAngleDegrees", "lobe", "spill");

    private static final Map<ShapeKind, List<String>> NEEDED = Map.of(
            ShapeKind.LINE, List.of("lengthMetres"),
            ShapeKind.CYLINDER, List.of("lengthMetres", "radiusMetres"),
            ShapeKind.SPOT, List.of("beamAngleDegrees"),
            ShapeKind.DISC, List.of("radiusMetres"),
            ShapeKind.PANEL, List.of("lengthMetres", "widthMetres"));

    private static final Map<ShapeKind, List<String>> POSSIBLE = Map.of(
            ShapeKind.LINE, List.of("lobe", "spill"),
            ShapeKind.SPOT, List.of("radiusMetres"),
            ShapeKind.MEASURED, List.of("radiusMetres"));

    private ShapeRules() {}

    /**
     * Asks for measures that are missing, and for those to be left out that do not belong.
     *
     * @param before the shape that the model has: only a file gives it one by a file
     */
    static void check(Errors errors, Optional<LampShape> before) {
        if (String.valueOf(errors.getFieldValue("shapeKind")).equals(ShapeKind.MEASURED.name())
                && before.filter(LampShape.Measured.class::isInstance).isEmpty()) {
            errors.rejectValue("shapeKind", "lamp-model.shape.file");
        }
        if (errors.hasFieldErrors("shapeKind")) {
            return;
        }
        Optional.ofNullable(errors.getFieldValue("shapeKind"))
                .map(Object::toString)
                .filter(chosen -> !chosen.isEmpty())
                .map(ShapeKind::valueOf)
                .ifPresentOrElse(kind -> check(kind, errors), () -> checkNothingIsGiven(errors));
    }

    private static void checkNothingIsGiven(Errors errors) {
        if (MEASURES.stream().anyMatch(measure -> isGiven(errors, measure))) {
            errors.rejectValue("shapeKind", "lamp-model.shape.choose");
        }
    }

    private static void check(ShapeKind kind, Errors errors) {
        List<String> needed = NEEDED.getOrDefault(kind, List.of());
        List<String> possible = POSSIBLE.getOrDefault(kind, List.of());
        needed.stream()
                .filter(measure -> !isGiven(errors, measure))
                .forEach(measure -> errors.rejectValue(measure, "lamp-model.shape.needs"));
        MEASURES.stream()
                .filter(measure -> !needed.contains(measure) && !possible.contains(measure))
                .filter(measure -> isGiven(errors, measure))
                .forEach(measure -> errors.rejectValue(measure, "lamp-model.shape.has-none"));
        if (kind == ShapeKind.LINE && isGiven(errors, "spill") && !isGiven(errors, "lobe")) {
            errors.rejectValue("lobe", "lamp-model.shape.lobe");
        }
    }

    private static boolean isGiven(Errors errors, String field) {
        Object typed = errors.getFieldValue(field);
        return typed != null && !typed.toString().isBlank();
    }
}
