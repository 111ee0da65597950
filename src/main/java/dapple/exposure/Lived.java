package dapple.exposure;

import dapple.animal.StayFacts;
import dapple.enclosure.PlannedOffTime;
import dapple.enclosure.PointFacts;
import dapple.light.dose.LightRecord;
import dapple.light.dose.PointReading;
import dapple.light.dose.Schedule;
import dapple.light.dose.Span;
import dapple.light.dose.TimedLamp;
import dapple.light.dose.TimedLamps;
import dapple.light.dose.Timer;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.order.OrderFacts;
import dapple.reading.JudgedReading;
import dapple.rig.DailyTimer;
import dapple.rig.FittedLamp;
import dapple.rig.LampTimer;
import dapple.rig.RigChangeFacts;
import dapple.site.Given;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What is on record of where an animal lived, a little beyond the period that is asked for.
 *
 * @param stays oldest first
 * @param orders all that ever counted for it, newest first
 * @param readings of every quantity, newest first
 * @param points all of the site, by id
 */
public record Lived(
        List<StayFacts> stays,
        List<OrderFacts> orders,
        List<JudgedReading> readings,
        Map<Long, PointFacts> points,
        List<PlannedOffTime> plannedOff,
        List<RigChangeFacts> changes,
        List<FittedLamp> lamps) {

    LightRecord light(ZoneId zone) {
        return new LightRecord(
                zone,
                Spells.of(stays, changes, plannedOff),
                new TimedLamps(stays.stream().flatMap(this::timed).toList()),
                readings.stream().filter(this::counts).map(this::pointReading).toList());
    }

    PointFacts point(JudgedReading reading) {
        return Given.of(points.get(reading.pointId()));
    }

    /** Whether a reading tells of the animal's ultraviolet: of the UV index, held as asked, at a point that serves it. */
    boolean counts(JudgedReading reading) {
        return reading.quantity() == Quantity.UV_INDEX
                && reading.heldAsAsked()
                && reading.speciesId().isPresent()
                && point(reading).role() != PointRole.KEEPER;
    }

    private PointReading pointReading(JudgedReading reading) {
        return new PointReading(
                reading.takenAt(),
                point(reading).role(),
                reading.measured(),
                reading.state().orElse(State.NO_TARGET));
    }

    /** The lamps that give ultraviolet, while the animal was there. */
    private Stream<TimedLamp> timed(StayFacts stay) {
        return lamps.stream()
                .filter(lamp -> lamp.enclosureId() == stay.enclosureId()
                        && lamp.lampClass().emitsUltraviolet())
                .flatMap(lamp -> during(stay)
                        .meet(new Span(lamp.from(), lamp.to().orElse(Instant.MAX)))
                        .stream()
                        .map(there -> new TimedLamp(there, lamp.timer().map(Lived::schedule))));
    }

    private static Schedule schedule(LampTimer timer) {
        return day -> timer.timesOf(day).map(Lived::timers).orElse(List.of());
    }

    private static List<Timer> timers(DailyTimer times) {
        return times.isAlwaysOn()
                ? List.of(new Timer(LocalTime.MIDNIGHT, LocalTime.NOON), new Timer(LocalTime.NOON, LocalTime.MIDNIGHT))
                : List.of(new Timer(times.on(), times.off()));
    }

    static Span during(StayFacts stay) {
        return new Span(stay.from(), stay.to().orElse(Instant.MAX));
    }
}
