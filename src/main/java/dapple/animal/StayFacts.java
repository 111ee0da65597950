package dapple.animal;

import java.time.Instant;
import java.util.Optional;

/** A stay as other features see it, over [from, to). */
public record StayFacts(long id, long enclosureId, AnimalFacts animal, Instant from, Optional<Instant> to) {}
