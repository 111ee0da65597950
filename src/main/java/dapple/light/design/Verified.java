package dapple.light.design;

/** A mix with what the engine itself says of it. */
record Verified(Mix mix, PlannedRig rig, Score score) {}
