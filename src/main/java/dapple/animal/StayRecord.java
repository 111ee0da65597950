package dapple.animal;

import java.time.Instant;
import java.util.Optional;

/** A stay with who entered it and why, and who withdrew it and why. */
public record StayRecord(
        StayFacts stay, String reason, Instant recordedAt, long personId, Optional<Withdrawal> withdrawal) {
    /** A stay that never was. */
    public record Withdrawal(Instant at, long personId, String reason) {}
}
