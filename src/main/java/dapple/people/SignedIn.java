package dapple.people;

import dapple.site.Author;
import dapple.site.Settings;
import dapple.site.SiteFacts;
import java.io.Serializable;
import java.security.Principal;
import java.time.ZoneId;
import java.util.Set;

/**
 * The person who asks, at the site that they work at, with what the database says of them at this request.
 *
 * @param settings what the site has settled
 */
public record SignedIn(
        long personId,
        String signInName,
        String fullName,
        long siteId,
        String siteName,
        ZoneId zone,
        Settings settings,
        Set<Role> roles)
        implements Principal, Author, Serializable {

    @Override
    public String getName() {
        return signInName;
    }

    /** The site that they work at. */
    public SiteFacts site() {
        return new SiteFacts(siteId, siteName, zone);
    }

    public boolean may(Action action) {
        return action.isAllowedToAny(roles);
    }

    /** For templates, which know actions by name. */
    public boolean may(String action) {
        return may(Action.valueOf(action));
    }
}
