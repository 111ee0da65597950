package dapple.light.metrology;

import java.util.List;

/**
 * What else explains the same readings about as well.
 *
 * @param otherMeters that may have changed the other way instead
 * @param allLamps whether all lamps may have changed at once
 */
public record Doubt(List<String> otherMeters, boolean allLamps) {
    public Doubt {
        otherMeters = List.copyOf(otherMeters);
    }

    /** Whether it is this meter and nothing else. */
    public boolean isNone() {
        return otherMeters.isEmpty() && !allLamps;
    }
}
