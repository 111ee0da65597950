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
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What readings in one enclosure are judged by. Each fact is asked for once as long as nothing of it changes, however
 * many readings rest on it. For one thread, within one transaction.
 */
class Grounds {
    private final long siteId;
    private final long enclosureId;
    private final Services services;
    private final UnaryOperator<Instant> sinceWhen;
    private final Map<Long, PointFacts> points = new HashMap<>();
    private final Map<Long, MeterFacts> meters = new HashMap<>();
    private final Map<Long, Double> stated = new HashMap<>();
    private final Map<Instant, Then> then = new HashMap<>();

    /**
     * Of an enclosure.
     *
     * @param sinceWhen since when the facts at an instant have been what they are
     */
    Grounds(long siteId, long enclosureId, Services services, UnaryOperator<Instant> sinceWhen) {
        this.siteId = siteId;
        this.enclosureId = enclosureId;
        this.services = services;
        this.sinceWhen = sinceWhen;
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
        return known(at(at).needs, point.id(), () -> services.needs.of(siteId, enclosureId, point, at));
    }

    Optional<CalibrationInForce> calibration(long meterId, Instant at) {
        return known(at(at).calibrations, meterId, () -> services.meters.calibrationAt(meterId, at));
    }

    /** The newest change of the rig. */
    Optional<Long> rig(Instant at) {
        return known(at(at).rigs, enclosureId, () -> services.rigs.idAt(siteId, enclosureId, at));
    }

    boolean isPlannedOff(Instant at) {
        return known(at(at).off, enclosureId, () -> services.enclosures.isPlannedOff(siteId, enclosureId, at));
    }

    private Then at(Instant at) {
        return then.computeIfAbsent(sinceWhen.apply(at), since -> new Then());
    }

    private static <T> T known(Map<Long, T> facts, long id, Supplier<T> asked) {
        return facts.computeIfAbsent(id, unknown -> asked.get());
    }

    /** Who knows the facts. */
    record Services(Needs needs, Enclosures enclosures, Meters meters, Rigs rigs) {}

    /** The facts while none of them changes, by what they are of. */
    private static final class Then {
        private final Map<Long, List<Need>> needs = new HashMap<>();
        private final Map<Long, Optional<CalibrationInForce>> calibrations = new HashMap<>();
        private final Map<Long, Optional<Long>> rigs = new HashMap<>();
        private final Map<Long, Boolean> off = new HashMap<>();
    }
}
