package dapple.practice;

import dapple.site.NotFoundException;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What has happened to one meter and how it was checked. */
@Service
class PracticeRecord {
    /** Of each kind on one page: two years of weekly checks. */
    private static final Limit SHOWN = Limit.of(104);

    private final MeterEventRepository events;
    private final MeterCheckRepository checks;
    private final ReferenceLampRepository lamps;

    PracticeRecord(MeterEventRepository events, MeterCheckRepository checks, ReferenceLampRepository lamps) {
        this.events = events;
        this.checks = checks;
        this.lamps = lamps;
    }

    /** Newest first, those that were withdrawn among them. */
    @Transactional(readOnly = true)
    public List<MeterEventFacts> events(long siteId, long meterId) {
        return events.ofMeter(siteId, meterId, SHOWN).stream()
                .map(MeterEvent::facts)
                .toList();
    }

    @Transactional(readOnly = true)
    public MeterEventFacts event(long siteId, long meterId, long eventId) {
        return events.findOfMeter(siteId, meterId, eventId)
                .map(MeterEvent::facts)
                .orElseThrow(NotFoundException::new);
    }

    /** Newest first. */
    @Transactional(readOnly = true)
    public List<MeterCheckFacts> checks(long siteId, long meterId) {
        return checks.ofMeter(siteId, meterId, SHOWN).stream()
                .map(MeterCheck::facts)
                .toList();
    }

    @Transactional(readOnly = true)
    public Optional<ReferenceLampFacts> lamp(long siteId, long meterId) {
        return lamps.inUse(siteId, meterId).map(ReferenceLamp::facts);
    }
}
