package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.reading.Reading.Recorded;
import java.time.Clock;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps whether the cover was open or closed at a visit. */
@Service
public class VisitCovers {
    private final VisitCoverRepository covers;
    private final VisitOpening opening;
    private final Enclosures enclosures;
    private final Patiently patiently;
    private final Clock clock;

    VisitCovers(
            VisitCoverRepository covers,
            VisitOpening opening,
            Enclosures enclosures,
            Patiently patiently,
            Clock clock) {
        this.covers = covers;
        this.opening = opening;
        this.enclosures = enclosures;
        this.patiently = patiently;
        this.clock = clock;
    }

    /** Says how the cover was; the first entry of a visit begins it. The same twice is kept once. */
    public void say(Visitor visitor, UUID visitKey, long enclosureId, CoverSaid cover) {
        enclosures.get(visitor.siteId(), enclosureId);
        patiently.run(() -> {
            Visit visit = opening.at(visitor, visitKey, enclosureId, clock.instant());
            CoverSaid before =
                    of(visitor.siteId(), visitKey).map(VisitCoverFacts::cover).orElse(CoverSaid.NOT_SAID);
            if (before != cover) {
                keep(visitor, visit, cover, Optional.empty());
            }
            return visit.id();
        });
    }

    /** The same of what may have been said earlier; the same key is stored once, however often it is sent. */
    public void say(Visitor visitor, NewCover said) {
        enclosures.get(visitor.siteId(), said.enclosureId());
        patiently.run(() -> {
            Visit visit = opening.at(visitor, said.visitKey(), said.enclosureId(), said.saidAt());
            if (!covers.existsByEntryKey(said.key())) {
                keep(visitor, visit, said.cover(), Optional.of(said.key()));
            }
            return visit.id();
        });
    }

    private void keep(Visitor visitor, Visit visit, CoverSaid cover, Optional<UUID> key) {
        covers.saveAndFlush(new VisitCover(visit, cover, key, new Recorded(clock.instant(), visitor.personId())));
    }

    /** What was said last. */
    @Transactional(readOnly = true)
    public Optional<VisitCoverFacts> of(long siteId, UUID visitKey) {
        return covers.ofVisit(siteId, visitKey).map(VisitCover::facts);
    }

    /** How the cover was when some readings were taken, by reading; only where it was said. */
    @Transactional(readOnly = true)
    public Map<Long, CoverSaid> atReadings(long siteId, Collection<Long> readingIds) {
        return readingIds.isEmpty()
                ? Map.of()
                : covers.atReadings(siteId, readingIds).stream()
                        .filter(said -> said.cover() != CoverSaid.NOT_SAID)
                        .collect(Collectors.toMap(
                                VisitCoverRepository.AtReading::readingId, VisitCoverRepository.AtReading::cover));
    }
}
