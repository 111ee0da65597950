package dapple.prediction;

/** What a form for cover asks for. */
enum CoverKind {
    /** A mesh by its wire and pitch. */
    WEAVE,
    /** A mesh by what passes. */
    MESH,
    SHEET;

    boolean isMesh() {
        return this != SHEET;
    }
}
