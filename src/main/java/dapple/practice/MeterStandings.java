package dapple.practice;

import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How the meters of a site stand. */
@Service
public class MeterStandings {
    private final Meters meters;
    private final MeterEventRepository events;
    private final MeterCheckRepository checks;
    private final ReferenceLampRepository lamps;
    private final MeterDoubts doubts;
    private final Clock clock;

    MeterStandings(
            Meters meters,
            MeterEventRepository events,
            MeterCheckRepository checks,
            ReferenceLampRepository lamps,
            MeterDoubts doubts,
            Clock clock) {
        this.meters = meters;
        this.events = events;
        this.checks = checks;
        this.lamps = lamps;
        this.doubts = doubts;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public MeterStanding at(long siteId, ZoneId zone) {
        return new MeterStanding(
                events.whereabouts(siteId).stream()
                        .map(MeterEvent::facts)
                        .collect(Collectors.toMap(MeterEventFacts::meterId, Function.identity())),
                checks.newest(siteId).stream()
                        .map(MeterCheck::facts)
                        .collect(Collectors.groupingBy(MeterCheckFacts::meterId)),
                lamps.inUse(siteId).stream()
                        .map(ReferenceLamp::facts)
                        .collect(Collectors.toMap(ReferenceLampFacts::meterId, Function.identity())),
                doubts.at(siteId),
                clock.instant(),
                zone);
    }

    /** What is due with the meters in use. */
    @Transactional(readOnly = true)
    public List<PracticeDue> due(long siteId, ZoneId zone) {
        List<MeterFacts> inUse = meters.inUse(siteId);
        return inUse.isEmpty() ? List.of() : at(siteId, zone).due(inUse);
    }
}
