package dapple.light.dose;

import java.util.Optional;

/**
 * An ultraviolet lamp on a timer or several.
 *
 * @param schedule none where it is not known when the lamp is on
 */
public record TimedLamp(Span during, Optional<Schedule> schedule) {}
