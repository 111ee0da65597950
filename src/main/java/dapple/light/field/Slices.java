package dapple.light.field;

/** What is integrated: light by a coordinate, times a weight that is known and whose integral is known. */
interface Slices {
    /** Adds the light at a coordinate, per unit of the weight. */
    void light(double at, Tally into);

    /** What bounds the light that was given last, as a number: it changes smoothly as long as this does not change. */
    default long pattern() {
        return 0;
    }

    /** The weight, 1 unless it says otherwise. */
    interface Weight {
        default double weight(double at) {
            return 1;
        }

        /** Its integral. */
        default double weight(double from, double to) {
            return to - from;
        }
    }
}
