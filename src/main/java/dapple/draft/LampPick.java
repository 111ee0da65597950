package dapple.draft;

/** Which lamp a draft means. */
public sealed interface LampPick {
    /** One that the site has. */
    record Stock(long lampId) implements LampPick {}

    /** One of a model, still to be bought. */
    record Model(long modelId) implements LampPick {}
}
