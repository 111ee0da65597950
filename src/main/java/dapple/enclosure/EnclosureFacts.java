package dapple.enclosure;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An enclosure as lists and headings show it. */
public record EnclosureFacts(
        long id, String code, long roomId, String room, Optional<InnerSize> size, Optional<Instant> retiredAt) {
    EnclosureFacts(
            long id, String code, long roomId, String room, @Nullable InnerSize size, @Nullable Instant retiredAt) {
        this(id, code, roomId, room, Optional.ofNullable(size), Optional.ofNullable(retiredAt));
    }

    public boolean isInUse() {
        return retiredAt.isEmpty();
    }
}
