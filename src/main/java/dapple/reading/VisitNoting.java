package dapple.reading;

import dapple.enclosure.Enclosures;
import dapple.reading.Reading.Recorded;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what people note on their visits. */
@Service
public class VisitNoting {
    private static final Limit SHOWN = Limit.of(100);

    private final VisitNoteRepository notes;
    private final VisitOpening opening;
    private final Enclosures enclosures;
    private final Patiently patiently;
    private final Clock clock;

    VisitNoting(
            VisitNoteRepository notes, VisitOpening opening, Enclosures enclosures, Patiently patiently, Clock clock) {
        this.notes = notes;
        this.opening = opening;
        this.enclosures = enclosures;
        this.patiently = patiently;
        this.clock = clock;
    }

    /**
     * Keeps a note; the first entry of a visit begins it.
     *
     * @param key made where it was typed: the same key is stored once, however often it is sent
     */
    public void note(Visitor visitor, UUID visitKey, long enclosureId, UUID key, String note) {
        note(visitor, new NewNote(key, visitKey, enclosureId, note, clock.instant()));
    }

    /** The same of a note that may have been typed earlier. */
    public void note(Visitor visitor, NewNote typed) {
        enclosures.get(visitor.siteId(), typed.enclosureId());
        patiently.run(() -> {
            Visit visit = opening.at(visitor, typed.visitKey(), typed.enclosureId(), typed.notedAt());
            if (notes.findByEntryKey(typed.key()).isEmpty()) {
                Recorded recorded = new Recorded(clock.instant(), visitor.personId());
                notes.saveAndFlush(new VisitNote(visit, typed.key(), typed.note(), typed.notedAt(), recorded));
            }
            return visit.id();
        });
    }

    /** The notes on a visit, oldest first. */
    @Transactional(readOnly = true)
    public List<VisitNoteFacts> of(long siteId, UUID visitKey) {
        return notes.ofVisit(siteId, visitKey, SHOWN).stream()
                .map(VisitNote::facts)
                .toList();
    }
}
