package dapple.copying;

import java.time.Instant;
import java.util.List;

/**
 * What is to be made.
 *
 * @param codes of the copies, each once
 * @param at since when what hangs and stands there does so
 * @param burnHours how long each lamp has burnt, h
 * @param likeness a few words that say what they are copies of: the note of the rig, the name of the draft
 */
record CopyPlan(List<String> codes, long roomId, Instant at, LampsOfCopies lamps, double burnHours, String likeness) {
    CopyPlan {
        codes = List.copyOf(codes);
    }
}
