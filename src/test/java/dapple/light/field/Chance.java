package dapple.light.field;

import dapple.light.geometry.Vec;
import java.util.Random;

/** Random amounts from a seed; neighbouring seeds have nothing in common. */
final class Chance {
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private final Random random;

    Chance(long seed) {
        this.random = new Random(seed * SPREAD);
    }

    /** Any amount between two as likely as any other. */
    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Any order of magnitude as likely as any other. */
    double logBetween(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    int below(int count) {
        return random.nextInt(count);
    }

    boolean oneIn(int count) {
        return random.nextInt(count) == 0;
    }

    Vec direction() {
        return new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    }

    /** A direction about another one, the less so the larger the spread. */
    Vec about(Vec direction, double spread) {
        return direction
                .plus(new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(spread))
                .unit();
    }

    Vec within(Vec least, Vec greatest) {
        return new Vec(
                between(least.x(), greatest.x()), between(least.y(), greatest.y()), between(least.z(), greatest.z()));
    }
}
