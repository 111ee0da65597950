package dapple.light.dose;

import java.util.Optional;

/**
 * An ultraviolet lamp on a timer.
 *
 * @param timer none where it is not known when the lamp is on
 */
public record TimedLamp(Span during, Optional<Timer> timer) {}
