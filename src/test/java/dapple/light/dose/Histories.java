package dapple.light.dose;

import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Valid histories of light in London. */
final class Histories {
    static final ZoneId LONDON = ZoneId.of("Europe/London");
    static final LocalDate JUNE = LocalDate.of(2026, 6, 1);
    static final Timer ALL_MORNING = new Timer(LocalTime.of(6, 0), LocalTime.of(12, 0));

    private static final double HALF_INTERVAL = 0.2;

    private static final List<PointRole> ROLES = List.copyOf(EnumSet.complementOf(EnumSet.of(PointRole.KEEPER)));
    private static final List<State> STATES = List.copyOf(EnumSet.allOf(State.class));

    /** Lamps twice as often as the others together. */
    private static final List<Circumstance> CIRCUMSTANCES = List.of(
            Circumstance.UNDER_LAMPS,
            Circumstance.UNDER_LAMPS,
            Circumstance.UNDER_LAMPS,
            Circumstance.UNDER_LAMPS,
            Circumstance.PLANNED_OFF,
            Circumstance.NOWHERE);

    private Histories() {}

    static Instant noon(int dayOfJune) {
        return JUNE.withDayOfMonth(dayOfJune).atTime(12, 0).atZone(LONDON).toInstant();
    }

    static Instant at(LocalDate day, LocalTime time) {
        return day.atTime(time).atZone(LONDON).toInstant();
    }

    static Span always() {
        return Span.since(Instant.EPOCH);
    }

    static Spell underLamps(Span during) {
        return new Spell(during, Circumstance.UNDER_LAMPS);
    }

    static TimedLamps lampsOn(Timer... timers) {
        return new TimedLamps(List.of(timers).stream()
                .map(timer -> new TimedLamp(always(), Optional.of(timer)))
                .toList());
    }

    /** With an interval of ±20 %. */
    static PointReading reading(Instant at, PointRole role, double index) {
        return reading(at, role, index, State.ON_TARGET);
    }

    static PointReading reading(Instant at, PointRole role, double index, State judged) {
        Interval interval = new Interval(index * (1 - HALF_INTERVAL), index * (1 + HALF_INTERVAL));
        return new PointReading(at, role, new MeasuredAmount(index, interval), judged);
    }

    /** Basking and shade at noon. */
    static List<PointReading> readOn(int dayOfJune, double basking, double shade) {
        return List.of(
                reading(noon(dayOfJune), PointRole.BASKING, basking), reading(noon(dayOfJune), PointRole.SHADE, shade));
    }

    @SafeVarargs
    @SuppressWarnings("varargs")
    static LightHistory undisturbed(List<PointReading>... readings) {
        return of(List.of(underLamps(always())), lampsOn(ALL_MORNING), flat(List.of(readings)));
    }

    @SafeVarargs
    @SuppressWarnings("varargs")
    static LightHistory with(List<Spell> spells, List<PointReading>... readings) {
        return of(spells, lampsOn(ALL_MORNING), flat(List.of(readings)));
    }

    private static List<PointReading> flat(List<List<PointReading>> readings) {
        return readings.stream().flatMap(List::stream).toList();
    }

    static LightHistory of(List<Spell> spells, TimedLamps lamps, List<PointReading> readings) {
        return new LightHistory(new LightRecord(LONDON, spells, lamps, readings), DoseSettings.USUAL);
    }

    /** Some spells over 60 days from 1 October, a clock change among them. */
    static List<Spell> spells(Random chance) {
        List<Spell> spells = new ArrayList<>();
        Instant from = at(LocalDate.of(2026, 10, 1), LocalTime.MIDNIGHT);
        while (from.isBefore(at(LocalDate.of(2026, 11, 30), LocalTime.MIDNIGHT))) {
            Instant to = from.plusSeconds(3600L * (1 + chance.nextInt(24 * 30)));
            spells.add(new Spell(new Span(from, to), CIRCUMSTANCES.get(chance.nextInt(CIRCUMSTANCES.size()))));
            from = to;
        }
        return spells;
    }

    /** Some readings over 60 days from 1 October, in and out of order of brightness. */
    static List<PointReading> readings(Random chance) {
        List<PointReading> readings = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            Instant at = at(LocalDate.of(2026, 10, 1), LocalTime.MIDNIGHT).plusSeconds(chance.nextInt(60 * 86_400));
            PointRole role = ROLES.get(chance.nextInt(ROLES.size()));
            State judged = STATES.get(chance.nextInt(STATES.size()));
            readings.add(reading(at, role, chance.nextDouble() * 8, judged));
        }
        return readings;
    }

    static Timer timer(Random chance) {
        int on = chance.nextInt(1440);
        int off = (on + 1 + chance.nextInt(1439)) % 1440;
        return new Timer(LocalTime.ofSecondOfDay(on * 60L), LocalTime.ofSecondOfDay(off * 60L));
    }
}
