package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.field.BruteForce.BoxObstacle;
import dapple.light.field.BruteForce.Obstacle;
import dapple.light.field.BruteForce.PostObstacle;
import dapple.light.field.BruteForce.RodObstacle;
import dapple.light.geometry.Box;
import dapple.light.geometry.Capsule;
import dapple.light.geometry.Solid;
import dapple.light.geometry.UprightCylinder;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Random scenes from a seed: one lamp at the origin that points down, a place below it, and what stands between. */
record SeededScenes(
        Lamp lamp, Vec place, Vec normal, List<Solid> solids, List<Obstacle> obstacles, List<Filter> filters) {
    private static final Vec ORIGIN = new Vec(0, 0, 0);

    /** A lamp of every shape in turn, a place from 10 mm away outwards, any direction of the receiver. */
    static SeededScenes open(long seed) {
        Random random = new Random(seed);
        Lamp lamp = lamp(random, (int) (seed % 6));
        double away = 0.01 + random.nextDouble() * random.nextDouble() * 1.5;
        Vec place = outside(lamp, direction(random), away);
        return new SeededScenes(lamp, place, direction(random), List.of(), List.of(), List.of());
    }

    /** The same with filters between lamp and place. */
    static SeededScenes filtered(long seed) {
        Random random = new Random(seed);
        Lamp lamp = lamp(random, (int) (seed % 6));
        return new SeededScenes(lamp, below(random), upwards(random), List.of(), List.of(), filters(random));
    }

    /** The same with solids between lamp and place as well. */
    static SeededScenes shaded(long seed) {
        Random random = new Random(seed);
        Lamp lamp = lamp(random, (int) (seed % 6));
        List<Solid> solids = new ArrayList<>();
        List<Obstacle> obstacles = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int index = 0; index < count; index++) {
            addSolid(random, solids, obstacles);
        }
        return new SeededScenes(lamp, below(random), upwards(random), solids, obstacles, filters(random));
    }

    Scene scene(double accuracy) {
        return new Scene(accuracy, List.of(lamp), filters, solids);
    }

    boolean isPlaceFree() {
        return solids.stream().noneMatch(solid -> solid.holds(place) || solid.holds(ORIGIN));
    }

    private static Lamp lamp(Random random, int shape) {
        Vec aim = new Vec(random.nextGaussian() * 0.3, random.nextGaussian() * 0.3, -1).unit();
        Vec along = aim.anyPerpendicular();
        double size = 0.03 + random.nextDouble() * 0.5;
        Optional<Source.Reflector> reflector = random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new Source.Reflector(0.5 + 2.5 * random.nextDouble(), 0.2 * random.nextDouble()));
        Source source = switch (shape) {
            case 0 -> new Source.Line(size, along, reflector);
            case 1 -> new Source.Spot(new Beam.Power(1 + 20 * random.nextDouble()));
            case 2 -> new Source.Cylinder(size, along, size * (0.01 + 0.1 * random.nextDouble()));
            case 3 -> new Source.Disc(size * 0.3);
            case 4 -> new Source.Rectangle(size, along, size * (0.1 + random.nextDouble()));
            default -> new Source.Face(new Beam.Power(1 + 20 * random.nextDouble()), size * 0.3);
        };
        return new Lamp("lamp", ORIGIN, aim, source, List.of(new Output.Emission(Quantity.UV_INDEX, 1, 1)));
    }

    /** A place at least so far outside the lamp's box, in a direction. */
    private static Vec outside(Lamp lamp, Vec direction, double away) {
        double reach = Emitter.of(lamp).hull().corners().stream()
                .mapToDouble(corner -> corner.dot(direction))
                .max()
                .orElse(0);
        return direction.times(reach + away);
    }

    private static Vec below(Random random) {
        return new Vec(random.nextGaussian() * 0.3, random.nextGaussian() * 0.3, -0.9);
    }

    private static Vec upwards(Random random) {
        return new Vec(random.nextGaussian() * 0.3, random.nextGaussian() * 0.3, 1).unit();
    }

    private static Vec direction(Random random) {
        return new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    }

    private static List<Filter> filters(Random random) {
        List<Filter> filters = new ArrayList<>();
        Vec up = new Vec(0, 0, 1);
        if (random.nextBoolean()) {
            filters.add(
                    new Filter.Mesh(Filter.Plane.of(new Vec(0, 0, -0.55), up, Optional.empty()), 0.0009, 0.00635, 1));
        }
        if (random.nextBoolean()) {
            Filter.Plane part = Filter.Plane.of(
                    new Vec(0, 0, -0.6), up, Optional.of(Filter.Rectangle.between(-0.1, -0.1, 0.15, 0.2)));
            filters.add(new Filter.Measured(part, Map.of(Quantity.UV_INDEX, 0.3), 1));
        }
        if (random.nextInt(3) == 0) {
            Filter.Plane tilted = Filter.Plane.of(new Vec(0, 0, -0.7), new Vec(0.1, 0, 1), Optional.empty());
            filters.add(new Filter.Pane(tilted, 1.52, 0.004, Map.of(Quantity.UV_INDEX, 10.0)));
        }
        return filters;
    }

    private static void addSolid(Random random, List<Solid> solids, List<Obstacle> obstacles) {
        Vec centre =
                new Vec(random.nextGaussian() * 0.15, random.nextGaussian() * 0.15, -0.55 - 0.2 * random.nextDouble());
        double size = 0.02 + 0.15 * random.nextDouble();
        switch (random.nextInt(3)) {
            case 0 -> {
                Vec half = new Vec(size, size * 0.7, 0.02);
                double yaw = 90 * random.nextDouble();
                solids.add(Box.of(centre.minus(half), centre.plus(half), yaw));
                obstacles.add(new BoxObstacle(centre.minus(half), centre.plus(half), yaw));
            }
            case 1 -> {
                Vec end = centre.plus(new Vec(random.nextGaussian() * 0.2, random.nextGaussian() * 0.2, 0.05));
                solids.add(Capsule.of(centre, end, size * 0.2));
                obstacles.add(new RodObstacle(centre, end, size * 0.2));
            }
            default -> {
                solids.add(UprightCylinder.of(centre, 0.1, size * 0.5));
                obstacles.add(new PostObstacle(centre, 0.1, size * 0.5));
            }
        }
    }
}
