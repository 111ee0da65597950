package dapple.review;

import dapple.light.judging.State;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A decision about a finding.
 *
 * @param state of the enclosure when it was made
 * @param until last day for which it is accepted, or on which it is to be done
 * @param ownReading whether who made it had taken the reading, at a site of one person
 */
public record DecisionFacts(
        long id,
        long enclosureId,
        DecisionKind kind,
        State state,
        String text,
        Optional<LocalDate> until,
        Optional<Long> givenTo,
        boolean ownReading,
        Instant madeAt,
        long madeBy) {}
