package dapple.animal;

import java.time.Instant;

/** An animal or a new group has left a group for a record of its own. */
public record GroupSplit(long siteId, long groupId, long newAnimalId, Instant at, long personId) {}
