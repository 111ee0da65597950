package dapple.people;

import dapple.site.Settings;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One role that a person has or had at a site.
 *
 * @param settings what the site has settled; none where the usual values stand
 */
record Held(
        Person person,
        Membership membership,
        long siteId,
        String siteName,
        String timeZone,
        @Nullable Settings settings) {

    ZoneId zone() {
        return ZoneId.of(timeZone);
    }

    boolean isAt(Instant now) {
        return membership.holdsOn(now.atZone(zone()).toLocalDate());
    }

    SignedIn signedIn(Set<Role> roles) {
        Settings settled = settings == null ? Settings.USUAL : settings;
        return new SignedIn(person.id(), person.signInName(), person.name(), siteId, siteName, zone(), settled, roles);
    }
}
