package dapple.light.field;

import dapple.light.field.Cover.Plate;
import dapple.light.field.Obstacle.BoxObstacle;
import dapple.light.field.Obstacle.PostObstacle;
import dapple.light.field.Obstacle.RodObstacle;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Random scenes from seeds; described in {@code docs/physics.md}, how the field is tested. */
final class SeededScenes {
    private static final Vec DOWN = new Vec(0, 0, -1);

    /** The nearest that a receiver comes to a source, m. */
    private static final double NEAREST = 0.01;

    private static final double FARTHEST = 3;
    private static final int TRIES = 1000;

    private SeededScenes() {}

    /** Lamps of every kind in turn anywhere, a receiver from 10 mm away outwards, nothing between. */
    static SeededScene open(long seed) {
        Chance chance = new Chance(seed);
        List<SeededLamp> lamps =
                lamps(seed, new Vec(-0.4, -0.4, -0.4), new Vec(0.4, 0.4, 0.4), chance::direction, chance);
        return new SeededScene(seed, lamps, receiver(seed, lamps, near(lamps, chance), chance), List.of(), List.of());
    }

    /** Lamps above one to four filters, a receiver mostly below them. */
    static SeededScene filtered(long seed) {
        Chance chance = new Chance(seed + 1_000_000);
        return filtered(seed, 1 + chance.below(4), chance);
    }

    private static SeededScene filtered(long seed, int count, Chance chance) {
        List<SeededLamp> lamps =
                lamps(seed, new Vec(-0.4, -0.3, 0.2), new Vec(0.4, 0.3, 0.5), () -> chance.about(DOWN, 0.4), chance);
        List<Cover> covers = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            covers.add(cover(chance));
        }
        Vec place = free(lamps, List.of(), new Vec(-0.6, -0.4, -0.6), new Vec(0.6, 0.4, 0.15), chance);
        return new SeededScene(seed, lamps, receiver(seed, lamps, place, chance), covers, List.of());
    }

    /** The same with one to four solids between, and filters in every other scene. */
    static SeededScene shaded(long seed) {
        Chance chance = new Chance(seed + 2_000_000);
        SeededScene open = filtered(seed, chance.oneIn(2) ? 0 : 1 + chance.below(2), chance);
        List<Obstacle> obstacles = new ArrayList<>();
        int count = 1 + chance.below(4);
        while (obstacles.size() < count) {
            Obstacle obstacle = obstacle(chance);
            if (open.seededLamps().stream().noneMatch(lamp -> isTouched(lamp.surface(), obstacle))) {
                obstacles.add(obstacle);
            }
        }
        Vec place = free(open.seededLamps(), obstacles, new Vec(-0.5, -0.4, -1), new Vec(0.5, 0.4, -0.15), chance);
        return new SeededScene(
                seed, open.seededLamps(), new Receiver(place, open.receiver().facing()), open.covers(), obstacles);
    }

    private interface Aim {
        Vec next();
    }

    private static List<SeededLamp> lamps(long seed, Vec least, Vec greatest, Aim aim, Chance chance) {
        int count = seed % 5 < 3 ? 1 : 2 + chance.below(3);
        List<SeededLamp> lamps = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            int kind = index == 0 ? (int) (seed % SeededLamp.KINDS) : chance.below(SeededLamp.KINDS);
            lamps.add(SeededLamp.random("lamp" + index, kind, chance.within(least, greatest), aim.next(), chance));
        }
        return lamps;
    }

    /** A place away from somewhere on the first lamp, mostly in front of it. */
    private static Vec near(List<SeededLamp> lamps, Chance chance) {
        SeededLamp lamp = lamps.get(0);
        for (int attempt = 0; attempt < TRIES; attempt++) {
            Vec from = lamp.surface().place(chance.between(0, 1), chance.between(0, 1));
            Vec direction = chance.direction();
            boolean turn = direction.dot(lamp.lamp().aim()) < 0 && !chance.oneIn(5);
            Vec place = from.plus(direction.times((turn ? -1 : 1) * chance.logBetween(NEAREST, FARTHEST)));
            if (isFree(place, lamps, List.of())) {
                return place;
            }
        }
        throw new IllegalStateException("no free place");
    }

    private static Vec free(List<SeededLamp> lamps, List<Obstacle> obstacles, Vec least, Vec greatest, Chance chance) {
        for (int attempt = 0; attempt < TRIES; attempt++) {
            Vec place = chance.within(least, greatest);
            if (isFree(place, lamps, obstacles)) {
                return place;
            }
        }
        throw new IllegalStateException("no free place");
    }

    private static boolean isFree(Vec place, List<SeededLamp> lamps, List<Obstacle> obstacles) {
        return lamps.stream().allMatch(lamp -> lamp.surface().distance(place) >= NEAREST)
                && obstacles.stream().noneMatch(obstacle -> obstacle.isNear(place));
    }

    private static boolean isTouched(Surface surface, Obstacle obstacle) {
        for (int part = 0; part < 64; part++) {
            int column = part % 8;
            int row = part / 8;
            if (obstacle.isNear(surface.place(column / 7.0, row / 7.0))) {
                return true;
            }
        }
        return false;
    }

    /** Facing a direction (any, or about a lamp), a lamp, the best direction, or all round, in turn. */
    private static Receiver receiver(long seed, List<SeededLamp> lamps, Vec place, Chance chance) {
        SeededLamp lamp = lamps.get(chance.below(lamps.size()));
        Vec towards = lamp.lamp().centre().minus(place).unit();
        Facing facing = switch ((int) (seed / SeededLamp.KINDS % 5)) {
            case 0 -> new Facing.Direction(chance.direction());
            case 1 -> new Facing.Direction(chance.about(towards, 0.4));
            case 2 -> new Facing.TowardsLamp(lamp.lamp().id());
            case 3 -> new Facing.Maximum();
            default -> new Facing.AllRound();
        };
        return new Receiver(place, facing);
    }

    private static Cover cover(Chance chance) {
        return switch (chance.below(3)) {
            case 0 -> {
                double wire = chance.between(0.0002, 0.001);
                yield new Cover.Weave(plate(chance), wire, wire / chance.between(0.05, 0.4), 1 + chance.below(3));
            }
            case 1 ->
                new Cover.Film(
                        plate(chance),
                        amounts(chance.between(0.02, 0.95), chance.between(0.3, 0.95)),
                        1 + chance.below(2));
            default ->
                new Cover.Glazing(
                        plate(chance),
                        chance.between(1.3, 1.7),
                        chance.between(0.001, 0.008),
                        amounts(chance.logBetween(5, 500), chance.between(2, 20)));
        };
    }

    private static Map<Quantity, Double> amounts(double uvIndex, double illuminance) {
        return Map.of(Quantity.UV_INDEX, uvIndex, Quantity.ILLUMINANCE, illuminance);
    }

    /** A horizontal plane, a part of one, or a leaning plane. */
    private static Plate plate(Chance chance) {
        Vec point = new Vec(0, 0, chance.between(-0.05, 0.1));
        double angle = chance.between(0, Math.PI);
        Vec along = new Vec(Math.cos(angle), Math.sin(angle), 0);
        return switch (chance.below(3)) {
            case 0 -> new Plate(point, Vec.UP, along, Optional.empty());
            case 1 -> {
                double x = chance.between(-0.3, 0.1);
                double y = chance.between(-0.3, 0.1);
                double[] corners = {x, y, x + chance.between(0.1, 0.5), y + chance.between(0.1, 0.5)};
                yield new Plate(point, Vec.UP, along, Optional.of(corners));
            }
            default -> {
                Vec normal = chance.about(Vec.UP, 0.15);
                yield new Plate(
                        point,
                        normal,
                        along.minus(normal.times(along.dot(normal))).unit(),
                        Optional.empty());
            }
        };
    }

    private static Obstacle obstacle(Chance chance) {
        Vec centre = chance.within(new Vec(-0.35, -0.3, -0.5), new Vec(0.35, 0.3, -0.05));
        double size = chance.logBetween(0.02, 0.25);
        return switch (chance.below(3)) {
            case 0 -> {
                Vec half = new Vec(size, size * chance.between(0.2, 1), size * chance.between(0.05, 1));
                yield new BoxObstacle(centre, half, chance.oneIn(3) ? 0 : chance.between(-90, 90));
            }
            case 1 ->
                new RodObstacle(
                        centre, centre.plus(chance.about(DOWN, 2).times(2 * size)), size * chance.between(0.1, 0.4));
            default -> new PostObstacle(centre, size, size * chance.between(0.2, 1));
        };
    }
}
