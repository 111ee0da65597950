package dapple.rig;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Who says that a rig changed, and when it did.
 *
 * @param at when it changed, not in the future
 * @param key made with the form: an entry that comes twice is one change
 * @param seen the change recorded last when the form was made, 0 if there was none; empty to look at none
 */
public record RigEntry(
        long siteId, long enclosureId, Instant at, String note, long personId, UUID key, Optional<Long> seen) {}
