package dapple.lamp;

/** The kinds of {@link LampShape}, as they are chosen and stored. */
enum ShapeKind {
    LINE,
    CYLINDER,
    SPOT,
    DISC,
    PANEL
}
