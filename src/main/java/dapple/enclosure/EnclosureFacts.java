package dapple.enclosure;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An enclosure as lists and headings show it, and as its light is computed.
 *
 * @param front empty: not said
 * @param reach empty: as far as those reach who live there
 */
public record EnclosureFacts(
        long id,
        String code,
        long roomId,
        String room,
        Optional<InnerSize> size,
        Optional<Instant> retiredAt,
        Optional<FrontKind> front,
        Optional<StatedReach> reach) {
    /** Of which neither front nor reach is said. */
    public EnclosureFacts(
            long id, String code, long roomId, String room, Optional<InnerSize> size, Optional<Instant> retiredAt) {
        this(id, code, roomId, room, size, retiredAt, Optional.empty(), Optional.empty());
    }

    /** Of what the queries name. */
    EnclosureFacts(
            long id,
            String code,
            long roomId,
            String room,
            @Nullable InnerSize size,
            @Nullable Instant retiredAt,
            @Nullable FrontKind front,
            @Nullable ReachKind reachKind,
            @Nullable Double reachMetres) {
        this(
                id,
                code,
                roomId,
                room,
                Optional.ofNullable(size),
                Optional.ofNullable(retiredAt),
                Optional.ofNullable(front),
                reach(reachKind, reachMetres));
    }

    static Optional<StatedReach> reach(@Nullable ReachKind kind, @Nullable Double metres) {
        return Optional.ofNullable(kind).map(said -> new StatedReach(said, Optional.ofNullable(metres)));
    }

    public boolean isInUse() {
        return retiredAt.isEmpty();
    }
}
