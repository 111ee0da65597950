package dapple.importing;

/** What a cover is, as far as sheets say it. */
enum CoverKind {
    MESH,
    GLASS,
    ACRYLIC
}
