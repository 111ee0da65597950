package dapple.rig;

/** A circuit with the version that a form about it is made from. */
record CircuitDetails(CircuitFacts facts, long version) {}
