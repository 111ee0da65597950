package dapple.people;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * A person as far as their leaving goes.
 *
 * @param leftAt when their access ended at every site; empty: it has not
 * @param siteIds where they have or had roles
 * @param isLastAdministrator whether a site would be left without an administrator
 */
public record Leaver(
        long personId, Optional<Instant> leftAt, Set<Long> siteIds, boolean isLastAdministrator, boolean isErased) {
    public boolean mayBeErased() {
        return leftAt.isPresent() && !isLastAdministrator && !isErased;
    }
}
