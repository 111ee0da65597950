package dapple.exposure;

import dapple.rig.FittedLamp;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigChangeKind;
import java.util.List;

/**
 * A change of a rig where the animal lived.
 *
 * @param came lamps as they hung and burnt since
 * @param went lamps as they hung and burnt until then
 */
public record RigEvent(RigChangeFacts change, List<FittedLamp> came, List<FittedLamp> went) {
    static RigEvent of(RigChangeFacts change, List<FittedLamp> lamps) {
        return new RigEvent(
                change,
                lamps.stream().filter(lamp -> lamp.begunBy() == change.id()).toList(),
                lamps.stream()
                        .filter(lamp ->
                                lamp.endedBy().filter(id -> id == change.id()).isPresent())
                        .toList());
    }

    /** Whether lamps went, and not only came to hang or burn otherwise. */
    public boolean tookOut() {
        return change.kind() == RigChangeKind.LAMP_SWAPPED || change.kind() == RigChangeKind.LAMP_TAKEN_OUT;
    }
}
