package dapple.draft;

/** A draft in the state in which a form was made from it. */
public record DraftSeen(long draftId, long version) {}
