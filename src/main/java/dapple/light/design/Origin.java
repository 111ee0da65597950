package dapple.light.design;

import dapple.light.source.Lamp;

/** Where a lamp comes from. */
public sealed interface Origin {
    /**
     * It hangs already.
     *
     * @param lamp as it hangs
     */
    record Hung(Lamp lamp, Freedom freedom) implements Origin {}

    /** It lies in stock. */
    record AtHand() implements Origin {}

    /** It is still to be bought. */
    record ToBuy() implements Origin {}

    /** What may be done with a lamp that hangs. */
    enum Freedom {
        /** It stays as it is. */
        STAYS,
        /** It may be moved, not taken down. */
        MAY_MOVE,
        /** It may be moved or taken down. */
        MAY_GO
    }
}
