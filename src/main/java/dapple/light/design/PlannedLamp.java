package dapple.light.design;

import dapple.light.source.Lamp;
import java.util.Optional;

/**
 * A lamp of a planned rig.
 *
 * @param placeId where it is to hang; empty: where it hangs now
 * @param lamp as it hangs then
 */
public record PlannedLamp(String optionId, Optional<String> placeId, Deed deed, Lamp lamp) {}
