package dapple.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * The lamps that hung in one place one after the other, each ageing at its own pace: e^(−pace · hours).
 *
 * @param turns oldest first; the last hangs there now
 * @param lossPerHour usual of the class, as a natural logarithm
 */
record DemoLampLife(List<Turn> turns, double hoursADay, double lossPerHour) {
    /** At these burn hours a lamp gives what is stated of its model, h: ours, so that readings lie around the prediction. */
    private static final double AS_STATED_HOURS = 600;

    /** How far the paces of single lamps differ, as a natural logarithm: less than in the worst collections, ours. */
    private static final double PACE_SCATTER = 0.3;

    private static final double OUTPUT_SCATTER = 0.03;
    private static final int SHORTEST_DAYS = 330;
    private static final int LONGEST_DAYS = 400;

    /**
     * Of a lamp and those that hung there before it.
     *
     * @param hoursNow how long the newest has burnt
     * @param isSwapped whether lamps of its class are swapped once a year; if not, one has hung there from the beginning
     */
    static DemoLampLife of(
            String tag, double hoursNow, double hoursADay, double lossPerHour, boolean isSwapped, Span span) {
        List<Turn> turns = new ArrayList<>();
        Random chance = new Random(tag.hashCode());
        long days = isSwapped ? Math.round(hoursNow / hoursADay) : Long.MAX_VALUE;
        Instant to = span.end();
        for (int before = 0; to.isAfter(span.begin()); before++) {
            boolean isFirst = days >= ChronoUnit.DAYS.between(span.begin(), to);
            Instant from = isFirst ? span.begin() : to.minus(Duration.ofDays(days));
            double old = isFirst && isSwapped ? hoursADay * (days - ChronoUnit.DAYS.between(span.begin(), to)) : 0;
            turns.add(new Turn(before == 0 ? tag : tag.charAt(0) + String.valueOf(before) + tag.substring(1), from, old));
            to = from;
            days = SHORTEST_DAYS + chance.nextInt(LONGEST_DAYS - SHORTEST_DAYS);
        }
        Collections.reverse(turns);
        return new DemoLampLife(List.copyOf(turns), hoursADay, lossPerHour);
    }

    /** What the lamp that hangs there at an instant gives over what is stated of its model. */
    double output(Instant at) {
        Turn turn = turns.stream()
                .filter(one -> !one.from().isAfter(at))
                .reduce((earlier, later) -> later)
                .orElse(turns.get(0));
        double days = Duration.between(turn.from(), at).toHours() / (double) Duration.ofDays(1).toHours();
        double hours = turn.hoursThen() + days * hoursADay;
        Random own = new Random(31L * turn.tag().hashCode());
        double pace = lossPerHour * Math.exp(PACE_SCATTER * own.nextGaussian());
        return Math.exp(OUTPUT_SCATTER * own.nextGaussian() - pace * (hours - AS_STATED_HOURS));
    }

    /** A lamp, since when it hung there and how long it had burnt before. */
    record Turn(String tag, Instant from, double hoursThen) {}

    /** From the beginning of the record to its end. */
    record Span(Instant begin, Instant end) {}
}
