package dapple.prediction;

import dapple.light.judging.Limits;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.zone.ZoneTarget;
import dapple.target.Target;
import java.util.Optional;

/**
 * What a species that lives in an enclosure needs.
 *
 * @param target in force; empty: none yet
 */
public record SpeciesNeed(long speciesId, String scientificName, Optional<Target> target) {
    public Optional<Limits> limits(Quantity quantity) {
        return target.flatMap(found -> found.limits(quantity));
    }

    /**
     * The limits of the zones by UV index. Where the limits of different places cross, the stricter one cuts the other off,
     * so that every amount lies in one zone.
     */
    public Optional<ZoneTarget> zones() {
        return limits(Quantity.UV_INDEX).map(SpeciesNeed::zones);
    }

    private static ZoneTarget zones(Limits limits) {
        double low = limits.basking().low();
        double high = Math.max(low, Math.min(limits.basking().high(), limits.ceiling()));
        return new ZoneTarget(new Interval(low, high), Math.min(limits.shadeHigh(), low), limits.ceiling());
    }

    double ceiling() {
        return limits(Quantity.UV_INDEX).map(Limits::ceiling).orElse(Limits.NO_CEILING);
    }
}
