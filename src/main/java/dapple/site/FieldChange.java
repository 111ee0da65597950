package dapple.site;

import java.util.Optional;

/** What one field of a recorded thing held before and after a change; an id for another thing. */
public record FieldChange(String entity, String field, Optional<Object> before, Optional<Object> after) {}
