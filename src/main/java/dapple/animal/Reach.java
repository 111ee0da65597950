package dapple.animal;

import dapple.light.quantity.Check;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where an animal can be: everywhere, or on the ground and as high as it reaches.
 *
 * @param groundMetres how high a ground dweller reaches, m; none: it climbs everywhere
 */
public record Reach(Optional<Double> groundMetres) {
    private static final double HIGHEST_METRES = 20;

    /** The safe side where nothing is said: every place is reachable. */
    public static final Reach EVERYWHERE = new Reach(Optional.empty());

    public Reach {
        groundMetres.ifPresent(metres -> Check.within("reach", metres, 0, HIGHEST_METRES, "m"));
    }

    static Reach of(@Nullable Double groundMetres) {
        return new Reach(Optional.ofNullable(groundMetres));
    }

    public boolean isEverywhere() {
        return groundMetres.isEmpty();
    }
}
