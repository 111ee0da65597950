package dapple.rig;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A part of a rig with the changes that began and ended it, by its name: of a lamp its tag.
 *
 * @param layers of a mesh; 0 of all else
 */
record PartTouched(
        Kind kind,
        String name,
        int layers,
        @Nullable Long begunBy,
        @Nullable Long endedBy) {
    enum Kind {
        LAMP,
        COVER,
        FURNITURE
    }

    /** Of a row with kind, name, layers, beginning and ending change. */
    static PartTouched of(Object[] row) {
        return new PartTouched(
                Kind.valueOf((String) row[0]), (String) row[1], ((Number) row[2]).intValue(), (Long) row[3], (Long)
                        row[4]);
    }

    boolean came(long changeId) {
        return begunBy != null && begunBy == changeId;
    }

    boolean went(long changeId) {
        return endedBy != null && endedBy == changeId;
    }

    boolean isAmong(List<PartTouched> others) {
        return others.stream().anyMatch(other -> other.kind == kind && other.name.equals(name));
    }
}
