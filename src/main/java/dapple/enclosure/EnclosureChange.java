package dapple.enclosure;

import java.util.Optional;

/** What is said of an enclosure when it is entered or changed; without a size it is measured only. */
public record EnclosureChange(long roomId, String code, int walkingOrder, Optional<InnerSize> size) {}
