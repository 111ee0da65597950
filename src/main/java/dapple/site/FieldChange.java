package dapple.site;

import java.util.Optional;

/** What one field of a recorded thing held before and after a change; an id for another thing, a set of elements. */
public record FieldChange(String entity, String field, Optional<Object> before, Optional<Object> after) {
    /** The same of a thing that was not there before. */
    FieldChange fromNothing() {
        return new FieldChange(entity, field, Optional.empty(), after);
    }
}
