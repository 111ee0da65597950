package dapple.light.survey;

import dapple.light.quantity.Check;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Body;
import dapple.light.zone.Grain;
import dapple.light.zone.RestingSurface;
import dapple.light.zone.ZoneTarget;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is asked of a scene on behalf of an animal, in one quantity.
 *
 * @param body that is to fit the patch; empty where nobody's size is known, then nothing is said of fitting
 * @param surfaces that it rests on; where none is named there is no patch
 * @param reachMetres of a ground dweller, at least 0; empty for a climber, which reaches every open place
 * @param also further quantities that a basking place must have, with their targets
 * @param overlap the share, 0 to 1, above which two lamps' patches overlap; empty if that is not asked
 * @param grain how finely the surfaces are looked at
 */
public record Needs(
        Quantity quantity,
        ZoneTarget target,
        Optional<Body> body,
        List<RestingSurface> surfaces,
        Optional<Double> reachMetres,
        Map<Quantity, Interval> also,
        Optional<Double> overlap,
        Grain grain) {
    public Needs {
        surfaces = List.copyOf(surfaces);
        also = Collections.unmodifiableMap(new TreeMap<>(also));
        reachMetres.ifPresent(reach -> Check.notNegative("reach", reach, "m"));
        overlap.ifPresent(share -> Check.within("share of an overlap", share, 0, 1, ""));
    }

    /** Needs that are looked at finely. */
    public Needs(
            Quantity quantity,
            ZoneTarget target,
            Optional<Body> body,
            List<RestingSurface> surfaces,
            Optional<Double> reachMetres,
            Map<Quantity, Interval> also,
            Optional<Double> overlap) {
        this(quantity, target, body, surfaces, reachMetres, also, overlap, Grain.FINE);
    }

    /** Needs of a climber that say nothing of a body, a resting surface or further quantities. */
    public static Needs of(Quantity quantity, ZoneTarget target) {
        return new Needs(quantity, target, Optional.empty(), List.of(), Optional.empty(), Map.of(), Optional.empty());
    }

    /** Where it rests, and who. */
    public Needs restingOn(List<RestingSurface> where, Optional<Body> who) {
        return new Needs(quantity, target, who, where, reachMetres, also, overlap, grain);
    }

    /** The same for a ground dweller. */
    public Needs reaching(double metres) {
        return new Needs(quantity, target, body, surfaces, Optional.of(metres), also, overlap, grain);
    }

    /** The same, its surfaces looked at more or less finely. */
    public Needs with(Grain how) {
        return new Needs(quantity, target, body, surfaces, reachMetres, also, overlap, how);
    }
}
