package dapple.prediction;

/**
 * A lamp to choose.
 *
 * @param hangsIn the code of the enclosure that it hangs in, or nothing
 * @param fault whether its spectrum has radiation that makes it a lamp fault
 */
record LampChoice(long id, String tag, String model, String hangsIn, boolean fault) {
    boolean hangs() {
        return !hangsIn.isEmpty();
    }
}
