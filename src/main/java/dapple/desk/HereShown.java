package dapple.desk;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.LightHere;
import dapple.prediction.LightHere.Lit;
import dapple.prediction.LightHere.Nothing;
import dapple.prediction.LightHere.Why;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What falls on a place that was pointed at.
 *
 * @param light empty where nothing can be said
 * @param why empty where light is known
 */
public record HereShown(Vec place, Quantity quantity, Optional<Lit> light, Optional<Why> why) {
    private static final Pattern METRES = Pattern.compile("-?[0-9]{1,2}(\\.[0-9]{1,4})?");

    /** The place that a form names; empty if it names none. */
    static Optional<Vec> asked(DeskForm form) {
        boolean isPlace = Stream.of("x", "y", "z")
                .allMatch(axis -> METRES.matcher(form.field(axis).strip()).matches());
        return isPlace
                ? Optional.of(new Vec(metres(form, "x"), metres(form, "y"), metres(form, "z")))
                : Optional.empty();
    }

    private static double metres(DeskForm form, String axis) {
        return Double.parseDouble(form.field(axis).strip());
    }

    static HereShown at(EnclosureScene scene, Quantity quantity, Vec place) {
        LightHere here = LightHere.at(scene, quantity, place);
        return here instanceof Lit lit
                ? new HereShown(place, quantity, Optional.of(lit), Optional.empty())
                : new HereShown(place, quantity, Optional.empty(), Optional.of(((Nothing) here).why()));
    }
}
