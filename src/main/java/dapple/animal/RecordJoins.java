package dapple.animal;

import java.time.Instant;

/** A record is about to join a group and end; whoever knows why it must not throws {@link RefusedException}. */
public record RecordJoins(long siteId, AnimalFacts animal, Instant at) {}
