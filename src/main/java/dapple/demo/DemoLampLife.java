package dapple.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * The lamps that hung in one place one after the other, each ageing at its own pace: e^(−pace · hours).
 *
 * @param turns oldest first; the last hangs there when the span ends
 */
record DemoLampLife(List<Turn> turns, Kind kind) {
    /** At these burn hours a lamp gives what is stated of its model, h: ours, so that readings lie around the prediction. */
    private static final double AS_STATED_HOURS = 600;

    /** How far the paces of single lamps differ, as a natural logarithm: less than in the worst collections, ours. */
    private static final double PACE_SCATTER = 0.3;

    private static final double OUTPUT_SCATTER = 0.03;

    /** How far the times after which lamps are swapped differ, as a share. */
    private static final double SWAP_SCATTER = 0.15;

    private static final int IN_STORE_DAYS = 14;
    private static final long SEED = 31;
    private static final double HOURS_PER_DAY = 24;

    /**
     * Of a lamp and those that hung there before it.
     *
     * @param hoursNow how long the newest has burnt when the span ends
     */
    static DemoLampLife of(String tag, double hoursNow, Kind kind, Span span) {
        if (kind.lasts()) {
            return new DemoLampLife(List.of(new Turn(tag, span.begin(), 0)), kind);
        }
        List<Turn> turns = new ArrayList<>();
        Random chance = new Random(tag.hashCode());
        double days = hoursNow / kind.hoursADay();
        Instant to = span.end();
        for (int before = 0; to.isAfter(span.begin()); before++) {
            Instant from = to.minus(
                    Duration.ofSeconds(Math.round(days * Duration.ofDays(1).toSeconds())));
            turns.add(kind.turn(tagBefore(tag, before), from, span.begin()));
            to = from;
            days = kind.usefulHours() / kind.hoursADay() * (1 + SWAP_SCATTER * (2 * chance.nextDouble() - 1));
        }
        Collections.reverse(turns);
        return new DemoLampLife(List.copyOf(turns), kind);
    }

    /** L140 hung where L40 hangs, and L240 before it. */
    private static String tagBefore(String tag, int before) {
        return before == 0 ? tag : tag.charAt(0) + Integer.toString(before) + tag.substring(1);
    }

    /** The tag of the lamp that hung there first. */
    String firstTag() {
        return turns.get(0).tag();
    }

    /** Some days before it first hung somewhere. */
    Instant boughtAt(Turn turn) {
        double daysBurnt = turn.hoursThen() / kind.hoursADay();
        return turn.from().minus(Duration.ofDays(IN_STORE_DAYS + Math.round(daysBurnt)));
    }

    /** What the lamp that hangs there at an instant gives over what is stated of its model. */
    double output(Instant at) {
        Turn turn = turns.stream()
                .filter(one -> !one.from().isAfter(at))
                .reduce((earlier, later) -> later)
                .orElse(turns.get(0));
        double hours = turn.hoursThen() + kind.hoursBetween(turn.from(), at);
        Random own = new Random(SEED * turn.tag().hashCode());
        double pace = kind.lossPerHour() * Math.exp(PACE_SCATTER * own.nextGaussian());
        return Math.exp(OUTPUT_SCATTER * own.nextGaussian() - pace * (hours - AS_STATED_HOURS));
    }

    /** A lamp, since when it hung there and how long it had burnt before. */
    record Turn(String tag, Instant from, double hoursThen) {}

    /** From the beginning of the record to its end. */
    record Span(Instant begin, Instant end) {}

    /**
     * How lamps of a place burn.
     *
     * @param lossPerHour usual of the class, as a natural logarithm
     * @param usefulHours after about how long they are swapped
     * @param lasts whether one hangs there from the beginning to the end
     */
    record Kind(double hoursADay, double lossPerHour, double usefulHours, boolean lasts) {
        private double hoursBetween(Instant from, Instant to) {
            return Duration.between(from, to).toHours() / HOURS_PER_DAY * hoursADay;
        }

        /** One that came before the record began is found there with its hours. */
        private Turn turn(String tag, Instant from, Instant begin) {
            return from.isAfter(begin) ? new Turn(tag, from, 0) : new Turn(tag, begin, hoursBetween(from, begin));
        }
    }
}
