package dapple.animal;

import java.time.Instant;

/** When and by whom something was entered. */
record Recorded(Instant at, long personId) {}
