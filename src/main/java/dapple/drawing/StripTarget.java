package dapple.drawing;

import dapple.light.judging.Band;
import java.time.Instant;

/**
 * The limits that held over a time.
 *
 * @param until {@link Instant#MAX} while they hold
 * @param name of the target's version, as drawn where it begins
 */
public record StripTarget(Instant from, Instant until, Band band, double ceiling, String name) {}
