package dapple.reading;

/** Something is to be judged anew as soon as the fact that asks for it is on record. */
record RejudgingAsked(long dueId) {}
