package dapple.reading;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.PointFacts;
import java.util.Optional;

/**
 * A reading that was corrected or withdrawn.
 *
 * @param instead the reading that stands in its place; empty: it was withdrawn
 */
public record ReadingUndone(
        RecordedReading reading, PointFacts point, EnclosureFacts enclosure, Optional<RecordedReading> instead) {}
