package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.enclosure.PointFacts;
import dapple.meter.CalibrationInForce;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.rig.Rigs;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What readings in one enclosure are judged by. Each fact is asked for once as long as nothing of it changes, however
 * many readings rest on it. For one thread, within one transaction.
 */
class Grounds {
    private final long siteId;
    private final long enclosureId;
    private final Services services;
    private final Since since;
    private final Map<Long, PointFacts> points = new HashMap<>();
    private final Map<Long, MeterFacts> meters = new HashMap<>();
    private final Map<Long, Double> stated = new HashMap<>();
    private final Map<Fact, List<Need>> needs = new HashMap<>();
    private final Map<Fact, Optional<CalibrationInForce>> calibrations = new HashMap<>();
    private final Map<Instant, Optional<Long>> rigs = new HashMap<>();
    private final Map<Instant, Boolean> off = new HashMap<>();

    Grounds(long siteId, long enclosureId, Services services, Since since) {
        this.siteId = siteId;
        this.enclosureId = enclosureId;
        this.services = services;
        this.since = since;
    }

    PointFacts point(long pointId) {
        return points.computeIfAbsent(pointId, id -> services.enclosures.point(siteId, id));
    }

    MeterFacts meter(long meterId) {
        return meters.computeIfAbsent(meterId, id -> services.meters.get(siteId, id));
    }

    double statedRepeats(long meterId) {
        return stated.computeIfAbsent(meterId, id -> services.meters.statedRepeats(siteId, id));
    }

    List<Need> needs(PointFacts point, Instant at) {
        Fact fact = new Fact(point.id(), since.needs.apply(at));
        return needs.computeIfAbsent(fact, unknown -> services.needs.of(siteId, enclosureId, point, at));
    }

    Optional<CalibrationInForce> calibration(long meterId, Instant at) {
        Fact fact = new Fact(meterId, since.calibrations.apply(at));
        return calibrations.computeIfAbsent(fact, unknown -> services.meters.calibrationAt(meterId, at));
    }

    /** The newest change of the rig. */
    Optional<Long> rig(Instant at) {
        return rigs.computeIfAbsent(since.rig.apply(at), unknown -> services.rigs.idAt(siteId, enclosureId, at));
    }

    boolean isPlannedOff(Instant at) {
        return off.computeIfAbsent(
                since.off.apply(at), unknown -> services.enclosures.isPlannedOff(siteId, enclosureId, at));
    }

    /** Who knows the facts. */
    record Services(Needs needs, Enclosures enclosures, Meters meters, Rigs rigs) {}

    /** Since when the facts of each kind at an instant have been what they are. */
    record Since(
            UnaryOperator<Instant> needs,
            UnaryOperator<Instant> calibrations,
            UnaryOperator<Instant> rig,
            UnaryOperator<Instant> off) {
        /** Where no turns are known, no instant tells of another. */
        static Since then() {
            return new Since(
                    UnaryOperator.identity(),
                    UnaryOperator.identity(),
                    UnaryOperator.identity(),
                    UnaryOperator.identity());
        }
    }

    /** What is so of a point or a meter while it does not change. */
    private record Fact(long id, Instant since) {}
}
