package dapple.walk;

import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.people.SignedIn;
import dapple.reading.Entry;
import dapple.reading.ReadingLogging;
import dapple.reading.ReadingView;
import dapple.reading.Readings;
import dapple.reading.Sentences;
import dapple.reading.TypedAmount;
import dapple.reading.Unread;
import dapple.reading.VisitPlace;
import dapple.reading.Visitor;
import dapple.site.Given;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;

/** Stores what phones send, each entry by itself and once; what cannot be stored is refused in words. */
@Service
class EntryTaking {
    private final Admission admission;
    private final ReadingLogging logging;
    private final VisitTaking visits;
    private final Readings readings;
    private final Meters meters;
    private final ReadersDose dose;
    private final Sentences sentences;
    private final MessageSource messages;

    EntryTaking(
            Admission admission,
            ReadingLogging logging,
            VisitTaking visits,
            Readings readings,
            Meters meters,
            ReadersDose dose,
            Sentences sentences,
            MessageSource messages) {
        this.admission = admission;
        this.logging = logging;
        this.visits = visits;
        this.readings = readings;
        this.meters = meters;
        this.dose = dose;
        this.sentences = sentences;
        this.messages = messages;
    }

    /**
     * Stores an entry, or finds it stored.
     *
     * @throws IllegalArgumentException if it is not whole
     */
    Answer take(SignedIn me, TypedEntry typed) {
        if (!typed.isWhole()) {
            throw new IllegalArgumentException(
                    "an entry must name its place, person, times, and an amount or an outcome");
        }
        return admission.admit(me, typed, takenAt -> stored(me, typed, takenAt));
    }

    private Answer stored(SignedIn me, TypedEntry typed, Instant takenAt) {
        if (typed.isOfVisit()) {
            return visits.take(me, typed, takenAt);
        }
        return typed.outcome() == null ? reading(me, typed, takenAt) : outcome(me, typed, takenAt);
    }

    private Answer outcome(SignedIn me, TypedEntry typed, Instant takenAt) {
        UUID key = Given.of(typed.key());
        logging.note(
                Visitor.of(me),
                new Unread(
                        key, place(typed), Given.of(typed.outcome()), Optional.ofNullable(typed.quantity()), takenAt));
        return Answer.stored(key, say("outcome." + typed.outcome()));
    }

    private Answer reading(SignedIn me, TypedEntry typed, Instant takenAt) {
        UUID key = Given.of(typed.key());
        Quantity quantity = Given.of(typed.quantity());
        MeterFacts meter = meters.get(me.siteId(), Given.of(typed.meterId()));
        if (meter.quantity() != quantity) {
            return Answer.refused(key, say("visit.meter.wrong"));
        }
        if (!typed.amounts().stream().allMatch(amount -> TypedAmount.isShown(amount, quantity))) {
            return Answer.refused(key, say("visit.amount.wrong." + quantity));
        }
        long id = logging.log(Visitor.of(me), entry(typed, meter, takenAt));
        ReadingView view = readings.judged(me.siteId(), id).get(0);
        dose.keep(me, typed, view);
        return new Answer(key, Answer.Kind.STORED, sentences.judged(view), Optional.of(id), view.state());
    }

    /** What counts of repeats is decided here, by the rule that the phone has too. */
    private static Entry entry(TypedEntry typed, MeterFacts meter, Instant takenAt) {
        Entry entry = new Entry(
                Given.of(typed.key()),
                place(typed),
                meter.id(),
                Given.number(typed.amount()),
                takenAt,
                Optional.ofNullable(typed.held()));
        return typed.taken()
                .map(taken -> entry.repeated(taken, typed.isStopped() ? taken.last() : taken.amount()))
                .orElse(entry);
    }

    private static VisitPlace place(TypedEntry typed) {
        return new VisitPlace(Given.of(typed.visitKey()), Given.of(typed.enclosureId()), Given.of(typed.pointId()));
    }

    private String say(String key) {
        return messages.getMessage(key, null, Locale.UK);
    }
}
