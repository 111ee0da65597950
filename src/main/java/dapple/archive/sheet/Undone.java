package dapple.archive.sheet;

import dapple.animal.StayRecord;
import dapple.enclosure.EnclosureFacts;
import dapple.meter.CalibrationDetails;
import dapple.meter.MeterFacts;
import dapple.reading.ReadingUndone;
import dapple.reading.RecordedReading;
import dapple.site.CsvColumns;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * Something that was corrected or withdrawn.
 *
 * @param what of what it was
 * @param was amount, certificate or stay, with its unit
 * @param is what stands in its place
 */
record Undone(
        Kind kind,
        Optional<Instant> at,
        Optional<Long> personId,
        String reason,
        String what,
        String was,
        Optional<String> is) {

    enum Kind {
        READING_CORRECTED,
        READING_WITHDRAWN,
        CALIBRATION_WITHDRAWN,
        STAY_WITHDRAWN
    }

    static Undone of(ReadingUndone undone) {
        RecordedReading reading = undone.reading();
        String what = undone.enclosure().code() + " " + undone.point().code() + ", reading no. " + reading.id();
        Optional<RecordedReading.Withdrawal> gone = reading.withdrawal();
        return new Undone(
                gone.isPresent() ? Kind.READING_WITHDRAWN : Kind.READING_CORRECTED,
                gone.map(RecordedReading.Withdrawal::at).or(reading::correctedAt),
                gone.map(RecordedReading.Withdrawal::personId)
                        .or(() -> undone.instead().map(RecordedReading::recordedBy)),
                gone.map(RecordedReading.Withdrawal::reason)
                        .or(() -> undone.instead().flatMap(RecordedReading::corrects))
                        .orElse(""),
                what,
                amount(reading),
                undone.instead().map(Undone::amount));
    }

    private static String amount(RecordedReading reading) {
        return reading.amount() + " " + reading.quantity().unit();
    }

    static Undone of(MeterFacts meter, CalibrationDetails calibration) {
        return new Undone(
                Kind.CALIBRATION_WITHDRAWN,
                calibration.withdrawal().map(gone -> gone.at()),
                calibration.withdrawal().map(gone -> gone.personId()),
                calibration.withdrawal().map(gone -> gone.reason()).orElse(""),
                meter.code(),
                calibration.certificate(),
                Optional.empty());
    }

    static Undone of(StayRecord stay, EnclosureFacts place) {
        return new Undone(
                Kind.STAY_WITHDRAWN,
                stay.withdrawal().map(StayRecord.Withdrawal::at),
                stay.withdrawal().map(StayRecord.Withdrawal::personId),
                stay.withdrawal().map(StayRecord.Withdrawal::reason).orElse(""),
                stay.stay().animal().accessionNumber(),
                place.code(),
                Optional.empty());
    }

    static CsvColumns<Undone> columns(Map<Long, String> names) {
        return CsvColumns.<Undone>none()
                .word("undone", "undone.", Undone::kind)
                .with("at", Undone::at)
                .with("said-by", row -> row.personId().map(names::get))
                .with("what", Undone::what)
                .with("was", Undone::was)
                .with("is", Undone::is)
                .with("reason", Undone::reason);
    }
}
