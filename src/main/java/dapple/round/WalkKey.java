package dapple.round;

import java.time.LocalDate;

/** What names a walk: its round, and the day on which it is due. */
public record WalkKey(long planId, LocalDate dueOn) {}
