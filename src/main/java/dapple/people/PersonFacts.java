package dapple.people;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A person as others see them at one site. */
public record PersonFacts(
        long id,
        long version,
        String signInName,
        String name,
        List<Role> roles,
        Optional<LocalDate> lastDay,
        Optional<Instant> deactivatedAt,
        Optional<Instant> erasedAt) {
    /** Whether the name and the sign-in name are not theirs any more. */
    public boolean isErased() {
        return erasedAt.isPresent();
    }

    public boolean isActive() {
        return deactivatedAt.isEmpty();
    }
}
