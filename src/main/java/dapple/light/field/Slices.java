package dapple.light.field;

/** What is integrated: the light of a slice of a source, by a coordinate across it. */
interface Slices {
    /** Adds the light of the slice at a coordinate to a sum that it finds cleared. */
    void light(double at, Tally into);
}
