package dapple.light.field;

import dapple.light.geometry.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The plane that has most light at a place. Where the light comes from near enough to one direction it faces the sum D of
 * all light: see {@link #isNarrow}. Elsewhere some light may lie behind the best plane: then it is looked for from the
 * sum, from the lamps and from pairs of them, each time turning towards the light in front until that changes no more,
 * first on a few beams, then on the light itself.
 */
final class Brightest {
    /** Starts are tried from no more than so many of the strongest lamps, and from pairs of so many. */
    private static final int MOST_SINGLE = 24;

    private static final int MOST_PAIRED = 8;
    private static final int MOST_TURNS = 12;
    private static final double STILL = 1e-9;

    /** The share of the accuracy that the direction may cost. */
    static final double OFF_BEST = 0.05;

    private static final double COS_45 = Math.sqrt(0.5);

    private final List<LampLight> lamps;
    private final double accuracy;
    private final Beams beams = new Beams();

    Brightest(List<LampLight> lamps, double accuracy) {
        this.lamps = lamps;
        this.accuracy = accuracy;
    }

    /**
     * A direction to face.
     *
     * @param isWhole whether no part of any lamp lies behind that plane
     */
    record Best(Vec facing, boolean isWhole) {}

    /** The direction to face for the quantity of a row, once all lamps have been looked at as vectors; up where there is no light. */
    Best facing(Vec place, int row) {
        LampLight.Sum found = new LampLight.Sum();
        lamps.forEach(lamp -> lamp.addVector(row, found));
        Tally sum = found.light;
        Vec all = new Vec(sum.x, sum.y, sum.z);
        if (!(sum.round > 0)) {
            return new Best(Vec.UP, true);
        }
        Vec facing = directionOr(all, Vec.UP);
        double least = leastCosine(place, row, facing);
        if (isNarrow(least, all.length(), sum.round)) {
            return new Best(facing, true);
        }
        Vec best = best(place, row);
        if (least > 0 && !(best.length() > beams.sum(0).length() * (1 + STILL))) {
            return new Best(facing, true);
        }
        return new Best(refine(place, row, directionOr(best, facing)), false);
    }

    /** The cosine of the largest angle between a direction and any corner of a lamp's hull. */
    private double leastCosine(Vec place, int row, Vec facing) {
        double least = 1;
        for (LampLight lamp : lamps) {
            if (lamp.lights(row)) {
                List<Vec> corners = lamp.hull().corners();
                for (int corner = 0; corner < corners.size(); corner++) {
                    Vec way = corners.get(corner).minus(place);
                    least = Math.min(least, way.dot(facing) / way.length());
                }
            }
        }
        return least;
    }

    /**
     * Whether no plane has more than the one that faces the sum D. Let all light lie within α of it. A plane turned by
     * less than 90° − α has all light in front and so D · m, which is less. One turned by γ has at most
     * D cos γ + ½ sin γ √(S² − D²), S the scalar irradiance, for what lies to one side balances what lies to the other;
     * from 90° − α on that is less than D where √(S² − D²) / D is at most 2 tan(45° − α/2). Up to 45° each part of the
     * light has all the rest in front of it, so that none is ever better left behind.
     */
    private static boolean isNarrow(double cosine, double vector, double scalar) {
        if (cosine >= COS_45) {
            return true;
        }
        double spread = Math.sqrt(Math.max(0, scalar * scalar - vector * vector));
        double sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
        return cosine > 0 && spread * cosine <= 2 * (1 - sine) * vector;
    }

    /** The largest sum of beams in front of a plane that is found from the starts. */
    private Vec best(Vec place, int row) {
        Vec best = new Vec(0, 0, 0);
        for (Vec start : starts(place, row)) {
            Vec climbed = beams.climb(start);
            if (climbed.length() > best.length()) {
                best = climbed;
            }
        }
        return best;
    }

    private List<Vec> starts(Vec place, int row) {
        beams.clear();
        List<Vec> single = new ArrayList<>();
        for (LampLight lamp : lamps) {
            int before = beams.count();
            if (lamp.lights(row)) {
                lamp.beams(place, row, beams);
            }
            if (beams.count() > before) {
                single.add(beams.sum(before));
            }
        }
        if (single.size() > MOST_PAIRED) {
            single.sort(Comparator.comparingDouble(Vec::length).reversed());
        }
        List<Vec> starts = new ArrayList<>();
        starts.add(beams.sum(0));
        for (int one = 0; one < Math.min(single.size(), MOST_SINGLE); one++) {
            starts.add(single.get(one));
            for (int other = 0; other < Math.min(one, MOST_PAIRED); other++) {
                starts.add(single.get(one).plus(single.get(other)));
            }
        }
        return starts;
    }

    /**
     * Turns towards what is really in front, until it turns by no more than δ. What a plane has falls by δ²/2 beside the
     * best, so that neither the turning nor the light that tells it need be known as well as the light itself.
     */
    private Vec refine(Vec place, int row, Vec rough) {
        double still = Math.sqrt(2 * OFF_BEST * accuracy) / 2;
        Vec facing = rough;
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            Vec next = directionOr(front(place, row, facing, still), facing);
            boolean isStill = next.minus(facing).length() < still;
            facing = next;
            if (isStill) {
                break;
            }
        }
        return facing;
    }

    private Vec front(Vec place, int row, Vec facing, double rough) {
        LampLight.Sum sum = new LampLight.Sum();
        View view = View.facing(facing);
        for (LampLight lamp : lamps) {
            if (lamp.lights(row)) {
                lamp.look(row, place, view, Math.max(rough, accuracy));
                lamp.add(row, sum);
            }
        }
        return new Vec(sum.light.x, sum.light.y, sum.light.z);
    }

    private static Vec directionOr(Vec way, Vec otherwise) {
        double length = way.length();
        return length > 0 ? way.times(1 / length) : otherwise;
    }
}
