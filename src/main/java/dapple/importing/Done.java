package dapple.importing;

import java.time.Instant;
import java.util.List;

/**
 * What an import did.
 *
 * @param known readings that were on record already, the same
 * @param differing readings that are on record otherwise, and stay so; the first of them as conflicts
 * @param leftOut bad rows
 */
record Done(
        List<Tried.Created> created,
        long visits,
        long stored,
        long known,
        long differing,
        List<Conflict> conflicts,
        long leftOut) {

    /** Whether anything besides readings came in. */
    public boolean addedSomething() {
        return created.stream().anyMatch(one -> one.fresh() > 0);
    }

    /** A reading of the sheets that is on record with another amount. */
    record Conflict(long enclosureId, long pointId, Instant at, double said, double standing) {}
}
