package dapple.enclosure;

/** What keepers open and look through. */
public enum FrontKind {
    GLASS,
    ACRYLIC,
    MESH,
    /** Nothing is looked through: keepers work from above. */
    SOLID,
    /** Nothing is there. */
    OPEN
}
