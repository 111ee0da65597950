package dapple.copying;

import java.util.UUID;

/**
 * Who copies which enclosure.
 *
 * @param key made with the form: a form that comes twice makes nothing twice
 * @param seen the original as the form showed it, by {@link Original#mark()}
 */
record CopyEntry(long siteId, long originalId, long personId, UUID key, String seen) {}
