package dapple.importing;

import dapple.importing.sheet.Subject;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What an import would do.
 *
 * @param readings how many there are, whether on record already or not
 * @param known how many of them are on record already, or stand in the sheets twice
 * @param differing how many of them are on record with another amount: these are not stored
 * @param bad how many rows are bad; the first of them are listed
 * @param dayOnly how many readings have a day and no time
 */
record Tried(
        List<Created> created,
        long readings,
        long known,
        long differing,
        Optional<Instant> first,
        Optional<Instant> last,
        long bad,
        List<BadRow> badRows,
        List<Notice> notices,
        long noticesNotListed,
        long dayOnly) {
    /** Whether anything of all this would be new. */
    public boolean addsSomething() {
        return readings > known + differing || created.stream().anyMatch(one -> one.fresh() > 0);
    }

    /**
     * What of one subject.
     *
     * @param names the first of those that are new
     */
    record Created(Subject subject, long fresh, long known, List<String> names) {}
}
