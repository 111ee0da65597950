package dapple.prediction;

/**
 * A lamp to choose.
 *
 * @param hangsIn the code of the enclosure that it hangs in, or nothing
 */
record LampChoice(long id, String tag, String model, String hangsIn) {}
