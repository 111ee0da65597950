package dapple.importing;

import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.Subject;
import dapple.people.SignedIn;
import java.util.Optional;

/** One reading of the sheets against the record: what checks of it need. */
record Checking(SignedIn me, Book book, Known known, Outcome outcome, Choices choices) {
    /** What is said of it cannot be taken; nothing is stored of it. */
    void bad(Entry entry, Reason reason, String text) {
        bad(entry, new BadCellException(reason, text));
    }

    /** The same because of something else, which is then said again. */
    void bad(Entry entry, BadCellException because) {
        outcome.badThing(entry.origin(), because);
        entry.leaveOut(because);
    }

    void missing(Entry entry, Field field) {
        bad(entry, Reason.MISSING, field.name());
    }

    void notice(Entry entry, Notice.Kind kind) {
        outcome.notice(kind, entry.name(), entry.origin());
    }

    /** Tells that what the sheet says is not what is on record, where the record says something. */
    void compare(Entry entry, Field field, Optional<?> recorded) {
        Optional<Object> said = Optional.ofNullable(entry.facts().get(field));
        if (said.isPresent() && recorded.isPresent() && !said.get().equals(recorded.get())) {
            outcome.notice(Notice.Kind.DIFFERS, entry.name() + "|" + field, entry.origin());
        }
    }

    /** Why what a fact of an entry names is left out. */
    Optional<BadCellException> whyLeftOut(Entry entry, Field field, Subject subject) {
        return entry.text(field).flatMap(key -> book.find(subject, key)).flatMap(Entry::whyLeftOut);
    }

    /** What a fact of an entry names, if it is there and stays. */
    Optional<Entry> named(Entry entry, Field field, Subject subject) {
        return entry.text(field).flatMap(key -> book.find(subject, key)).filter(found -> !found.isLeftOut());
    }
}
