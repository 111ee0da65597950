package dapple.enclosure;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An enclosure as lists and headings show it. */
public record EnclosureFacts(long id, String code, String room, Optional<InnerSize> size) {
    EnclosureFacts(long id, String code, String room, @Nullable InnerSize size) {
        this(id, code, room, Optional.ofNullable(size));
    }
}
