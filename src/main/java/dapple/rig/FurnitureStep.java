package dapple.rig;

/** What is done to the furniture of a rig. */
public sealed interface FurnitureStep extends RigStep {
    @Override
    default RigChangeKind kind() {
        return RigChangeKind.FURNITURE_CHANGED;
    }

    record Put(Furniture furniture) implements FurnitureStep {}

    /** A thing stands elsewhere, or is seen to be of another size. */
    record Move(long furnitureId, Furniture furniture) implements FurnitureStep {}

    record Remove(long furnitureId) implements FurnitureStep {}
}
