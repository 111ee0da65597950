package dapple.light.field;

import dapple.light.field.BruteForce.Effort;
import dapple.light.field.SeededScene.Expected;
import dapple.light.geometry.Vec;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Compares the engine with brute force on seeded scenes, and its estimate of its error with the error that it made. */
final class FieldAccuracy {
    /** Asked of the engine when it is compared with brute force. */
    private static final double ASKED = 1e-4;

    /** What the engine promises in the open and through filters: 0.1 %. */
    private static final double PROMISED = 1e-3;

    /** Asked for the value that an estimate is checked with. */
    private static final double FINEST = 1e-6;

    /** Sums of this many terms are not known better. */
    private static final double ROUNDING = 1e-12;

    /** Share of the bar from which brute force is asked again, more closely. */
    private static final double DOUBTFUL = 0.3;

    /** Less than this counts as this, where lamps give 0.5 to 50 near by: no instrument tells it from darkness. */
    private static final double NOTHING = 1e-12;

    /** Asked of the engine when its estimate is looked at. */
    private static final List<Double> ACCURACIES = List.of(1e-2, 1e-3, 1e-5);

    /** Share of scenes in which the error must be no larger than its estimate. */
    static final double HONEST = 0.99;

    private FieldAccuracy() {}

    /** Kinds of scenes, and how many of each. */
    enum Family {
        OPEN(2200),
        FILTERED(660),
        SHADED(660);

        final int scenes;

        Family(int scenes) {
            this.scenes = scenes;
        }

        private SeededScene scene(long seed) {
            return switch (this) {
                case OPEN -> SeededScenes.open(seed);
                case FILTERED -> SeededScenes.filtered(seed);
                case SHADED -> SeededScenes.shaded(seed);
            };
        }
    }

    /**
     * One comparison.
     *
     * @param off how far the engine is off, relative to the larger of the value and, in shade, 1 % of the unshaded value
     * @param ofBar the same as a share of what is allowed
     */
    record Outcome(long seed, double off, double ofBar) {
        boolean isWithinBar() {
            return ofBar <= 1;
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "seed %d off by %.2e, %.2f of what is allowed", seed, off, ofBar);
        }
    }

    static List<Outcome> compared(Family family, long count) {
        return LongStream.rangeClosed(1, count)
                .parallel()
                .mapToObj(seed -> compare(family.scene(seed)))
                .toList();
    }

    static Outcome compare(SeededScene scene) {
        Outcome usual = compare(scene, Effort.USUAL);
        return usual.ofBar() > DOUBTFUL ? compare(scene, Effort.GREAT) : usual;
    }

    private static Outcome compare(SeededScene scene, Effort effort) {
        Light light = scene.light(ASKED);
        double value = scene.value(light);
        Optional<Vec> normal = scene.normal(light);
        Outcome outcome = outcome(scene, value, scene.expected(normal, effort));
        if (!(scene.receiver().facing() instanceof Facing.Maximum)) {
            return outcome;
        }
        Expected most = scene.expected(Optional.of(scene.brightest()), effort);
        Outcome best = outcome(scene, Math.min(value, most.seen()), most);
        return best.ofBar() > outcome.ofBar() ? best : outcome;
    }

    private static Outcome outcome(SeededScene scene, double value, Expected expected) {
        boolean shaded = !scene.obstacles().isEmpty();
        double floor = Math.max(expected.seen(), shaded ? 0.01 * expected.unshaded() : 0);
        double bar = shaded ? expected.shadedBar() : PROMISED * expected.seen();
        double off = Math.abs(value - expected.seen());
        return new Outcome(scene.seed(), off / Math.max(floor, NOTHING), off / Math.max(bar, PROMISED * NOTHING));
    }

    /** How far off the engine is, as a share of what it says itself: a list for each accuracy asked. */
    static List<List<Outcome>> estimated(Family family, long count) {
        List<List<Outcome>> bySeed = LongStream.rangeClosed(1, count)
                .parallel()
                .mapToObj(seed -> estimate(family.scene(seed).fitted()))
                .toList();
        return IntStream.range(0, ACCURACIES.size())
                .mapToObj(column -> bySeed.stream().map(row -> row.get(column)).toList())
                .toList();
    }

    /** Share of scenes in which the error is no larger than allowed. */
    static double honest(List<Outcome> outcomes) {
        return outcomes.stream().filter(Outcome::isWithinBar).count() / (double) outcomes.size();
    }

    /** How many scenes, how many within the bar, within 0.01 % and within 0.001 %, and those beyond the bar. */
    static String told(List<Outcome> outcomes) {
        String counts = String.format(
                Locale.ROOT,
                "%d scenes, %d within what is allowed, %d within 1e-4, %d within 1e-5%n",
                outcomes.size(),
                outcomes.stream().filter(Outcome::isWithinBar).count(),
                outcomes.stream().filter(outcome -> outcome.off() <= 1e-4).count(),
                outcomes.stream().filter(outcome -> outcome.off() <= 1e-5).count());
        return outcomes.stream()
                .filter(outcome -> !outcome.isWithinBar())
                .map(outcome -> "  " + outcome + System.lineSeparator())
                .collect(Collectors.joining("", counts, ""));
    }

    private static List<Outcome> estimate(SeededScene scene) {
        Light finest = scene.light(FINEST);
        double unshaded = scene.obstacles().isEmpty()
                ? scene.value(finest)
                : scene.behind(scene.covers(), List.of()).value(FINEST);
        return ACCURACIES.stream()
                .map(accuracy -> estimate(scene, scene.light(accuracy), finest, unshaded))
                .toList();
    }

    private static Outcome estimate(SeededScene scene, Light light, Light finest, double unshaded) {
        double fine = scene.receiver().facing() instanceof Facing.Maximum
                ? scene.facing(new Facing.Direction(scene.normal(light).orElse(Vec.UP)))
                        .value(FINEST)
                : scene.value(finest);
        double floor = Math.max(fine, scene.obstacles().isEmpty() ? 0 : 0.01 * unshaded);
        double off = Math.abs(scene.value(light) - fine);
        double allowed = light.error() * Math.max(floor, scene.value(light)) + ROUNDING * Math.max(unshaded, NOTHING);
        return new Outcome(scene.seed(), off / Math.max(floor, NOTHING), off / allowed);
    }
}
