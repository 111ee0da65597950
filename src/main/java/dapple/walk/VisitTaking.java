package dapple.walk;

import dapple.people.SignedIn;
import dapple.reading.NewCover;
import dapple.reading.NewNote;
import dapple.reading.VisitCovers;
import dapple.reading.VisitNoting;
import dapple.reading.Visitor;
import dapple.site.Given;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;

/** Stores what phones send of a visit as a whole: a note, how the cover was; each once. */
@Service
class VisitTaking {
    private final VisitNoting noting;
    private final VisitCovers covers;
    private final MessageSource messages;

    VisitTaking(VisitNoting noting, VisitCovers covers, MessageSource messages) {
        this.noting = noting;
        this.covers = covers;
        this.messages = messages;
    }

    Answer take(SignedIn me, TypedEntry typed, Instant takenAt) {
        return typed.note() == null ? cover(me, typed, takenAt) : note(me, typed, typed.note(), takenAt);
    }

    private Answer note(SignedIn me, TypedEntry typed, String text, Instant takenAt) {
        UUID key = Given.of(typed.key());
        if (!NewNote.isNote(text)) {
            return Answer.refused(key, say("phone.refused.note"));
        }
        noting.note(
                Visitor.of(me),
                new NewNote(key, Given.of(typed.visitKey()), Given.of(typed.enclosureId()), text.strip(), takenAt));
        return Answer.stored(key, "");
    }

    private Answer cover(SignedIn me, TypedEntry typed, Instant takenAt) {
        UUID key = Given.of(typed.key());
        covers.say(
                Visitor.of(me),
                new NewCover(
                        key,
                        Given.of(typed.visitKey()),
                        Given.of(typed.enclosureId()),
                        Given.of(typed.cover()),
                        takenAt));
        return Answer.stored(key, "");
    }

    private String say(String key) {
        return messages.getMessage(key, null, Locale.UK);
    }
}
