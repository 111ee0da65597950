package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * The plane that has most light at a place. Where all sources lie within a right angle of one another it faces the sum of
 * all light. Elsewhere some light may lie behind the best plane: then it is looked for from the sum, from every lamp and
 * from every pair of lamps, each time turning towards the light in front until that changes no more, first on a few
 * beams, then on the light itself.
 */
final class Brightest {
    private static final int MOST_TURNS = 12;
    private static final double STILL = 1e-9;

    private final Field field;
    private final List<Vec> corners = new ArrayList<>();
    private final List<Vec> beams = new ArrayList<>();
    private final List<Vec> starts = new ArrayList<>();
    private final Tally tally = new Tally();

    Brightest(Field field) {
        this.field = field;
    }

    /** The direction to face for a quantity; up where there is no light at all. */
    Vec facing(Vec place, Quantity quantity) {
        Vec sum = light(place, quantity, View.VECTOR);
        if (isWithinARightAngle(place, quantity)) {
            return directionOr(sum, Vec.UP);
        }
        gather(place, quantity);
        return refine(place, quantity, best());
    }

    private Vec light(Vec place, Quantity quantity, View view) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int index = 0; index < field.lamps().size(); index++) {
            LampField lamp = field.lamps().get(index);
            double scale = lamp.scales().getOrDefault(quantity, 0.0);
            if (scale > 0) {
                tally.clear();
                field.unit(index)
                        .light(
                                place,
                                lamp.channel(quantity),
                                view,
                                field.scene().accuracy(),
                                tally);
                x += scale * tally.x;
                y += scale * tally.y;
                z += scale * tally.z;
            }
        }
        return new Vec(x, y, z);
    }

    /** Every pair of corners of the lamps' hulls seen at a right angle or less: then so is every pair of elements. */
    private boolean isWithinARightAngle(Vec place, Quantity quantity) {
        corners.clear();
        for (int index = 0; index < field.lamps().size(); index++) {
            if (field.lamps().get(index).scales().getOrDefault(quantity, 0.0) > 0) {
                field.unit(index).hull().forEach(corner -> corners.add(corner.minus(place)));
            }
        }
        for (int one = 1; one < corners.size(); one++) {
            for (int other = 0; other < one; other++) {
                if (corners.get(one).dot(corners.get(other)) < 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private void gather(Vec place, Quantity quantity) {
        beams.clear();
        starts.clear();
        Vec all = new Vec(0, 0, 0);
        List<Vec> sums = new ArrayList<>();
        for (int index = 0; index < field.lamps().size(); index++) {
            LampField lamp = field.lamps().get(index);
            double scale = lamp.scales().getOrDefault(quantity, 0.0);
            int before = beams.size();
            if (scale > 0) {
                field.unit(index).beams(place, lamp.channel(quantity), scale, beams);
            }
            Vec sum = new Vec(0, 0, 0);
            for (Vec beam : beams.subList(before, beams.size())) {
                sum = sum.plus(beam);
            }
            sums.add(sum);
            all = all.plus(sum);
        }
        starts.clear();
        starts.add(all);
        for (int one = 0; one < sums.size(); one++) {
            starts.add(sums.get(one));
            for (int other = 0; other < one; other++) {
                starts.add(sums.get(one).plus(sums.get(other)));
            }
        }
    }

    private Vec best() {
        Vec best = Vec.UP;
        double most = -1;
        for (Vec start : starts) {
            Vec facing = directionOr(start, Vec.UP);
            for (int turn = 0; turn < MOST_TURNS; turn++) {
                Vec front = front(facing);
                Vec next = directionOr(front, facing);
                if (front.dot(facing) > most) {
                    most = front.dot(facing);
                    best = facing;
                }
                if (next.minus(facing).length() < STILL) {
                    break;
                }
                facing = next;
            }
        }
        return best;
    }

    private Vec front(Vec facing) {
        Vec front = new Vec(0, 0, 0);
        for (Vec beam : beams) {
            if (beam.dot(facing) > 0) {
                front = front.plus(beam);
            }
        }
        return front;
    }

    /** Turns towards what is really in front, as long as that gains anything. */
    private Vec refine(Vec place, Quantity quantity, Vec rough) {
        Vec facing = rough;
        double gained = -1;
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            Vec front = light(place, quantity, View.facing(facing));
            double now = front.dot(facing);
            if (!(now > gained * (1 + field.scene().accuracy() / 10))) {
                break;
            }
            gained = now;
            Vec next = directionOr(front, facing);
            if (next.minus(facing).length() < STILL) {
                break;
            }
            facing = next;
        }
        return facing;
    }

    private static Vec directionOr(Vec way, Vec otherwise) {
        double length = way.length();
        return length > 0 ? way.times(1 / length) : otherwise;
    }
}
