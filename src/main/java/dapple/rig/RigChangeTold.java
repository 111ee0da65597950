package dapple.rig;

import java.util.List;

/** A change of a rig with the parts that it was about, by their names. */
public record RigChangeTold(RigChangeFacts change, List<String> came, List<String> went, List<String> changed) {
    static RigChangeTold of(RigChangeFacts change, PartsTouched parts) {
        return new RigChangeTold(
                change,
                names(parts.came(change.id())),
                names(parts.went(change.id())),
                names(parts.changed(change.id())));
    }

    private static List<String> names(List<PartTouched> parts) {
        return parts.stream().map(PartTouched::name).toList();
    }
}
