package dapple.reading;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.meter.MeterFacts;
import java.util.Optional;

/**
 * A reading, with one thing that is said of it now, as it leaves for a spreadsheet.
 *
 * @param verdict empty: nothing is said of it
 * @param limits by which the verdict was found
 * @param replaced the reading in whose place it stands
 */
public record ReadingLine(
        RecordedReading reading,
        PointFacts point,
        EnclosureFacts enclosure,
        MeterFacts meter,
        Optional<HistoryVerdict> verdict,
        Optional<Limits> limits,
        Optional<RecordedReading> replaced) {}
