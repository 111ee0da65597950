package dapple.commissioning;

import dapple.enclosure.PointFacts;
import dapple.light.judging.State;
import dapple.meter.MeterFacts;
import dapple.reading.JudgedReading;
import dapple.rig.LampTimer;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigScene;
import dapple.site.Settings;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which readings tell something of a rig: taken at a point with coordinates, of what is predicted, after the change and
 * with every lamp warm; the newest of each point, quantity and meter. A lamp of an unknown timer counts as switched on
 * when the rig was changed.
 */
record Counting(RigScene rig, RigChangeFacts change, Settings settings, ZoneId zone) {
    /** What counts, and how many readings since the change do not. */
    record Counted(List<Taken> taken, int others) {}

    private record Slot(PointFacts point, Object quantity, MeterFacts meter) {}

    Counted of(List<JudgedReading> newestFirst, Map<Long, PointFacts> points, Map<Long, MeterFacts> meters) {
        Map<Slot, Taken> counted = new LinkedHashMap<>();
        int others = 0;
        for (JudgedReading reading : gravest(newestFirst)) {
            Optional<Taken> taken = taken(reading, points, meters);
            taken.ifPresent(one -> counted.putIfAbsent(new Slot(one.point(), one.quantity(), one.meter()), one));
            others += taken.isPresent() || !rig.quantities().contains(reading.quantity()) ? 0 : 1;
        }
        return new Counted(List.copyOf(counted.values()), others);
    }

    /** Each reading once; of its verdicts that of harm, if there is one. */
    private static List<JudgedReading> gravest(List<JudgedReading> verdicts) {
        Map<Long, JudgedReading> once = new LinkedHashMap<>();
        verdicts.forEach(one -> once.merge(one.readingId(), one, (before, next) -> isHarm(next) ? next : before));
        return new ArrayList<>(once.values());
    }

    static boolean isHarm(JudgedReading reading) {
        return reading.state().filter(State.OVER_CEILING::equals).isPresent();
    }

    private Optional<Taken> taken(JudgedReading reading, Map<Long, PointFacts> points, Map<Long, MeterFacts> meters) {
        return Optional.ofNullable(points.get(reading.pointId()))
                .filter(point -> rig.quantities().contains(reading.quantity()))
                .filter(point -> rig.receiver(point).isPresent())
                .filter(point -> isWarm(reading.takenAt()))
                .flatMap(point -> Optional.ofNullable(meters.get(reading.meterId()))
                        .map(meter -> new Taken(reading, point, meter)));
    }

    private boolean isWarm(Instant at) {
        return !at.isBefore(change.at())
                && rig.rig().fittings().stream()
                        .allMatch(fitting -> isWarm(fitting.hanging().timer(), at));
    }

    private boolean isWarm(Optional<LampTimer> timer, Instant at) {
        return timer.map(known -> known.burningSince(change.at(), at, zone))
                .orElse(Optional.of(change.at()))
                .filter(on -> !on.plus(settings.warmUp()).isAfter(at))
                .isPresent();
    }
}
