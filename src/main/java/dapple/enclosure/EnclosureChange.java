package dapple.enclosure;

import java.util.Optional;

/**
 * What is said of an enclosure when it is entered or changed; without a size it is measured only.
 *
 * @param front empty: not said
 * @param reach empty: as far as those reach who live there
 */
public record EnclosureChange(
        long roomId,
        String code,
        int walkingOrder,
        Optional<InnerSize> size,
        Optional<FrontKind> front,
        Optional<StatedReach> reach) {

    /** Of which neither front nor reach is said. */
    public EnclosureChange(long roomId, String code, int walkingOrder, Optional<InnerSize> size) {
        this(roomId, code, walkingOrder, size, Optional.empty(), Optional.empty());
    }
}
