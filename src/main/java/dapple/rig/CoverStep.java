package dapple.rig;

/** What is done to the cover of a rig. */
public sealed interface CoverStep extends RigStep {
    @Override
    default RigChangeKind kind() {
        return RigChangeKind.COVER_CHANGED;
    }

    record Put(Cover cover) implements CoverStep {}

    record Replace(long coverId, Cover cover) implements CoverStep {}

    /** Layers of the same mesh come or go. */
    record SetLayers(long coverId, int layers) implements CoverStep {}

    record TakeOff(long coverId) implements CoverStep {}
}
