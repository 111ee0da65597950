package dapple.evidence;

import java.time.Instant;

/**
 * Which evidence holds for a species from an instant on, who chose it and why.
 *
 * @param number of the choice within the species, from 1
 */
public record ChoiceFacts(int number, EvidenceFacts evidence, String reason, Instant chosenAt, long chosenBy) {
    /** Whether this is what was asked for: a form that is sent twice changes nothing. */
    boolean is(NewChoice asked) {
        return evidence.id() == asked.evidenceId()
                && chosenBy == asked.personId()
                && reason.equals(asked.reason())
                && number == asked.seen() + 1;
    }
}
