package dapple.walk;

import dapple.people.SignedIn;
import dapple.site.ConflictException;
import dapple.site.Given;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Function;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Lets in what phones send, if who made it is signed in and it is not too old; what cannot be stored is refused in words. */
@Component
class Admission {
    /** What has waited longer than this is no part of a walk any more (ours, no source). */
    private static final Duration OLDEST = Duration.ofDays(90);

    private final MessageSource messages;
    private final Clock clock;

    Admission(MessageSource messages, Clock clock) {
        this.messages = messages;
        this.clock = clock;
    }

    /**
     * What became of an entry that names its place, person and times.
     *
     * @param storing stores it, given when it was made
     */
    Answer admit(SignedIn me, TypedEntry typed, Function<Instant, Answer> storing) {
        UUID key = Given.of(typed.key());
        if (Given.of(typed.personId()) != me.personId()) {
            return Answer.refused(key, say("phone.refused.person"));
        }
        Instant takenAt = takenAt(typed);
        if (takenAt.isBefore(clock.instant().minus(OLDEST))) {
            return Answer.refused(key, say("phone.refused.old"));
        }
        try {
            return storing.apply(takenAt);
        } catch (NotFoundException gone) {
            return Answer.refused(key, say("phone.refused.gone"));
        } catch (ConflictException taken) {
            return Answer.refused(key, say("phone.refused.conflict"));
        }
    }

    /** By the server's clock: the phone's may be wrong, yet knows how long ago it was. */
    private Instant takenAt(TypedEntry typed) {
        Duration ago = Duration.between(Given.of(typed.takenAt()), Given.of(typed.sentAt()));
        return clock.instant().minus(ago.isNegative() ? Duration.ZERO : ago);
    }

    private String say(String key) {
        return messages.getMessage(key, null, Locale.UK);
    }
}
