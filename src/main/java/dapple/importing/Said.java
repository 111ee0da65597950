package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What one row says of one thing. */
record Said(Subject subject, String key, String name, Map<Field, Object> facts) {
    static Said of(Subject subject, String key, String name) {
        return new Said(subject, key, name, new EnumMap<>(Field.class));
    }

    Said with(Field field, Optional<?> fact) {
        fact.ifPresent(said -> facts.put(field, said));
        return this;
    }
}
