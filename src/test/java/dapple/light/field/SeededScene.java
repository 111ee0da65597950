package dapple.light.field;

import dapple.light.cover.Filter;
import dapple.light.field.BruteForce.Effort;
import dapple.light.field.BruteForce.Sums;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A random scene with one receiver, as the engine knows it and as brute force does. */
record SeededScene(
        long seed, List<SeededLamp> seededLamps, Receiver receiver, List<Cover> covers, List<Obstacle> obstacles) {
    Scene scene(double accuracy) {
        return new Scene(accuracy, lamps(), filters(), solids());
    }

    List<Lamp> lamps() {
        return seededLamps.stream().map(SeededLamp::lamp).toList();
    }

    List<Filter> filters() {
        return covers.stream().map(Cover::filter).toList();
    }

    List<Solid> solids() {
        return obstacles.stream().map(Obstacle::solid).toList();
    }

    Vec place() {
        return receiver.place();
    }

    /** Which of its quantities is compared. */
    Quantity quantity() {
        return seed % 2 == 0 ? Quantity.UV_INDEX : Quantity.ILLUMINANCE;
    }

    SeededScene facing(Facing facing) {
        return new SeededScene(seed, seededLamps, new Receiver(place(), facing), covers, obstacles);
    }

    /** With the same emission for every lamp and quantity. */
    SeededScene emitting(double amount) {
        return with(seededLamps.stream().map(lamp -> lamp.emitting(amount)).toList());
    }

    SeededScene with(List<SeededLamp> otherLamps) {
        return new SeededScene(seed, otherLamps, receiver, covers, obstacles);
    }

    /** With emissions in place of readings, so that a lamp costs the engine nothing to be fitted. */
    SeededScene fitted() {
        return with(seededLamps.stream().map(lamp -> lamp.fitted(quantity())).toList());
    }

    SeededScene behind(List<Cover> otherCovers, List<Obstacle> otherObstacles) {
        return new SeededScene(seed, seededLamps, receiver, otherCovers, otherObstacles);
    }

    Light light(double accuracy) {
        return Field.of(scene(accuracy)).at(receiver);
    }

    double value(double accuracy) {
        return value(light(accuracy));
    }

    double value(Light light) {
        return light.values().getOrDefault(quantity(), Double.NaN);
    }

    /** The direction that a receiver faces, that of the answer where it chose itself; none from all round. */
    Optional<Vec> normal(Light light) {
        return light.facing().map(directions -> directions.getOrDefault(quantity(), Vec.UP));
    }

    /** What falls on a plane by brute force; from all round if there is no normal. */
    Expected expected(Optional<Vec> normal, Effort effort) {
        BruteForce brute = new BruteForce(obstacles, covers, quantity(), effort);
        Expected expected = new Expected(0, 0, 0);
        for (SeededLamp lamp : seededLamps) {
            Sums sums = brute.at(lamp.surface(), place(), normal);
            expected = expected.plus(lamp.scale(quantity()), sums, lamp.isThin());
        }
        return expected;
    }

    /** The plane that has most, by brute force. */
    Vec brightest() {
        BruteForce brute = new BruteForce(obstacles, covers, quantity(), Effort.USUAL);
        List<Vec> beams = new ArrayList<>();
        seededLamps.forEach(lamp -> beams.addAll(brute.beams(lamp.surface(), lamp.scale(quantity()), place())));
        return BruteForce.brightest(beams);
    }

    /**
     * What falls on a receiver.
     *
     * @param shadedBar how far a value in shade may be off: 0.2 % for lines and points, 1 % for surfaces, of the larger
     *     of the value and 1 % of the unshaded value
     */
    record Expected(double seen, double unshaded, double shadedBar) {
        private static final double LINES = 0.002;
        private static final double SURFACES = 0.01;
        private static final double DEEP_SHADE = 0.01;

        Expected plus(double scale, Sums sums, boolean isThin) {
            double bar = (isThin ? LINES : SURFACES) * Math.max(sums.seen(), DEEP_SHADE * sums.unshaded());
            return new Expected(
                    seen + scale * sums.seen(), unshaded + scale * sums.unshaded(), shadedBar + scale * bar);
        }
    }

    /** Turned and mirrored, for the engine alone. */
    SeededScene moved(Motion motion) {
        Facing facing = receiver.facing() instanceof Facing.Direction direction
                ? new Facing.Direction(motion.of(direction.normal()))
                : receiver.facing();
        return new SeededScene(
                seed,
                seededLamps.stream()
                        .map(lamp -> new SeededLamp(motion.of(lamp.lamp()), lamp.surface()))
                        .toList(),
                new Receiver(motion.of(place()), facing),
                covers.stream().map(cover -> cover.moved(motion)).toList(),
                obstacles.stream().map(obstacle -> obstacle.moved(motion)).toList());
    }
}
