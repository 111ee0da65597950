package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.Subject;
import dapple.importing.sheet.Words;
import dapple.lamp.LampFacts;
import java.time.Instant;
import java.util.Optional;

/** Holds what hangs and lies in enclosures, as the sheets say it, against the record. */
final class RigChecks {
    private final Checking on;

    RigChecks(Checking on) {
        this.on = on;
    }

    void check() {
        on.book().all(Subject.FITTING).forEach(this::fitting);
        on.book().all(Subject.COVER).forEach(this::cover);
    }

    private void fitting(Entry entry) {
        Optional<Entry> enclosure = on.named(entry, Field.ENCLOSURE_CODE, Subject.ENCLOSURE);
        Optional<Entry> lamp = on.book().find(Subject.LAMP, entry.key()).filter(found -> !found.isLeftOut());
        Optional<Instant> from = entry.fact(Field.FITTED_ON, Instant.class);
        Optional<String> hangs = Known.in(on.known().hanging(), entry.key());
        if (enclosure.isEmpty() || lamp.isEmpty()) {
            entry.leaveOut();
        } else if (hangs.equals(Optional.of(enclosure.get().key())) || isOnRecord(entry, from)) {
            entry.isOnRecordAs(0);
        } else if (hangs.isPresent()) {
            on.bad(entry, Reason.LAMP_HANGS, entry.name());
        } else if (isRetired(entry)) {
            on.bad(entry, Reason.LAMP_UNKNOWN, entry.name());
        } else if (isOutOfUse(enclosure.get())) {
            on.bad(entry, Reason.ENCLOSURE_OUT_OF_USE, enclosure.get().name());
        } else if (from.isEmpty()) {
            on.notice(entry, Notice.Kind.LAMP_WITHOUT_DAY);
            entry.leaveOut();
        } else {
            timer(entry);
        }
    }

    private boolean isOnRecord(Entry entry, Optional<Instant> from) {
        return from.map(at -> on.known().fitted().contains(SiteRecord.fitted(entry.key(), at)))
                .orElse(false);
    }

    private boolean isRetired(Entry entry) {
        return Known.in(on.known().lamps(), entry.key())
                .filter((LampFacts lamp) -> !lamp.isInUse())
                .isPresent();
    }

    private boolean isOutOfUse(Entry enclosure) {
        return Known.in(on.known().enclosures(), enclosure.key())
                .filter(facts -> !facts.isInUse())
                .isPresent();
    }

    private void timer(Entry entry) {
        if (entry.facts().containsKey(Field.TIMER_ON) != entry.facts().containsKey(Field.TIMER_OFF)) {
            on.missing(entry, entry.facts().containsKey(Field.TIMER_ON) ? Field.TIMER_OFF : Field.TIMER_ON);
        }
    }

    private void cover(Entry entry) {
        Optional<Entry> enclosure = on.named(entry, Field.ENCLOSURE_CODE, Subject.ENCLOSURE);
        if (enclosure.isEmpty()) {
            entry.leaveOut();
        } else if (on.known().covers().contains(entry.key())) {
            entry.isOnRecordAs(0);
        } else if (isOutOfUse(enclosure.get())) {
            on.bad(entry, Reason.ENCLOSURE_OUT_OF_USE, enclosure.get().name());
        } else if (!entry.facts().containsKey(Field.COVER_FROM)) {
            on.notice(entry, Notice.Kind.COVER_WITHOUT_DAY);
            entry.leaveOut();
        } else {
            kind(entry);
        }
    }

    private void kind(Entry entry) {
        Optional<CoverKind> kind = entry.fact(Field.COVER_KIND, CoverKind.class)
                .or(() -> Words.find("cover", CoverKind.class, entry.name()));
        if (kind.isEmpty()) {
            on.missing(entry, Field.COVER_KIND);
            return;
        }
        entry.put(Field.COVER_KIND, kind.get());
        on.notice(entry, Notice.Kind.COVER_UNKNOWN);
    }
}
