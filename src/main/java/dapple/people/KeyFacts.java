package dapple.people;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A key as its owner sees it; what it says is known to the program alone. Never used: no last use. */
record KeyFacts(
        long id, String name, Instant createdAt, @Nullable Instant lastUsed) {}
