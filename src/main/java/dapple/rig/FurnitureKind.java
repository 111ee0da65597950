package dapple.rig;

/** What a piece of furniture is taken for. */
public enum FurnitureKind {
    BOX,
    CYLINDER,
    CAPSULE
}
