package dapple.target;

import java.util.Optional;

/**
 * A target in force.
 *
 * @param light of this month; empty: the target says nothing of the length of the day
 */
public record TargetInMonth(Target target, Optional<LightHours> light) {}
