package dapple.review;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * A decision to record.
 *
 * @param key made with the form, so that it is recorded once however often it is sent
 * @param until needed to accept a finding or to give it to somebody
 * @param givenTo needed to give it to somebody
 */
public record NewDecision(
        UUID key, DecisionKind kind, String text, Optional<LocalDate> until, Optional<Long> givenTo) {}
