package dapple.rig;

/** One thing that is done to a rig. */
public sealed interface RigStep permits LampStep, CoverStep, FurnitureStep {
    RigChangeKind kind();
}
