package dapple.site;

import dapple.site.HistoryEntry.Kind;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.PersistenceUnitUtil;
import jakarta.persistence.Version;
import java.beans.Introspector;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.envers.NotAudited;
import org.hibernate.envers.RevisionType;
import org.jspecify.annotations.Nullable;

/**
 * What an audited thing was after one revision.
 *
 * @param fields what its audited fields held, in the order of the class
 */
record Snapshot(Class<?> type, Object id, Revision revision, RevisionType done, Map<String, Optional<Object>> fields) {

    /** The row of a query for revisions: the entity, its revision, what was done. */
    static Snapshot of(Object[] row, PersistenceUnitUtil ids) {
        Object entity = row[0];
        Map<String, Optional<Object>> fields = new LinkedHashMap<>();
        read(entity.getClass(), entity, ids, fields);
        return new Snapshot(
                entity.getClass(),
                Objects.requireNonNull(ids.getIdentifier(entity)),
                (Revision) row[1],
                (RevisionType) row[2],
                fields);
    }

    /** The name of the class in the keys of messages. */
    private String entity() {
        return Introspector.decapitalize(type.getSimpleName());
    }

    Kind kind() {
        return switch (done) {
            case ADD -> Kind.ENTERED;
            case MOD -> Kind.CHANGED;
            case DEL -> Kind.REMOVED;
        };
    }

    boolean isSameThing(Snapshot other) {
        return type.equals(other.type) && id.equals(other.id);
    }

    /** What differs from the next older state; from nothing, where there is none. */
    List<FieldChange> changesSince(Optional<Snapshot> older) {
        List<FieldChange> changes = new ArrayList<>();
        fields.forEach((field, held) -> {
            Optional<Object> before = done == RevisionType.DEL ? held : older.flatMap(state -> state.held(field));
            Optional<Object> after = done == RevisionType.DEL ? Optional.empty() : held;
            if (!before.equals(after)) {
                changes.add(new FieldChange(entity(), field, before, after));
            }
        });
        return changes;
    }

    private Optional<Object> held(String field) {
        return fields.getOrDefault(field, Optional.empty());
    }

    private static void read(
            Class<?> type, @Nullable Object holder, PersistenceUnitUtil ids, Map<String, Optional<Object>> fields) {
        for (Field field : type.getDeclaredFields()) {
            if (!isTold(field)) {
                continue;
            }
            if (field.getType().isAnnotationPresent(Embeddable.class)) {
                read(field.getType(), held(field, holder), ids, fields);
            } else {
                fields.put(field.getName(), Optional.ofNullable(plain(field, held(field, holder), ids)));
            }
        }
    }

    private static boolean isTold(Field field) {
        return !Modifier.isStatic(field.getModifiers())
                && !field.isAnnotationPresent(Id.class)
                && !field.isAnnotationPresent(Version.class)
                && !field.isAnnotationPresent(NotAudited.class)
                && !Collection.class.isAssignableFrom(field.getType())
                && !field.getName().equals("siteId");
    }

    /** The id instead of another thing, so that it need not be loaded. */
    private static @Nullable Object plain(Field field, @Nullable Object held, PersistenceUnitUtil ids) {
        return held != null && field.isAnnotationPresent(ManyToOne.class) ? ids.getIdentifier(held) : held;
    }

    private static @Nullable Object held(Field field, @Nullable Object holder) {
        if (holder == null) {
            return null;
        }
        try {
            field.setAccessible(true);
            return field.get(holder);
        } catch (IllegalAccessException closed) {
            throw new IllegalStateException("an audited field cannot be read: " + field, closed);
        }
    }
}
