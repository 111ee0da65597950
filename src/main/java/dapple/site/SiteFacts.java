package dapple.site;

import java.time.ZoneId;

/** What other features need to know of a site. */
public record SiteFacts(long id, String name, ZoneId timeZone) {}
