package dapple.reading;

import dapple.light.judging.State;
import dapple.light.quantity.Interval;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A verdict on record, standing or replaced, with what it used.
 *
 * @param target number of the target version
 * @param certificate of the calibration
 * @param factor of the calibration, where the meter showed the amount: true value over displayed value
 * @param calibratedAt when the meter was calibrated
 * @param calibratedSince when the calibration was recorded
 * @param orderId the vet's order that it was judged by
 */
public record HistoryVerdict(
        long readingId,
        Optional<Long> speciesId,
        Optional<State> state,
        double amount,
        Interval interval,
        Optional<Integer> target,
        Optional<String> certificate,
        Optional<Double> factor,
        Optional<Instant> calibratedAt,
        Optional<Instant> calibratedSince,
        Optional<Long> orderId,
        Instant judgedAt,
        Optional<Instant> replacedAt) {

    static final String SELECT =
            "select new dapple.reading.HistoryVerdict(d.readingId, d.speciesId, d.state, d.amount, "
                    + "d.low, d.high, t.number, c.certificate, d.factor, c.calibratedAt, c.recordedAt, d.vetOrderId, d.judgedAt, d.replacedAt) from Verdict d "
                    + "left join TargetVersion t on t.id = d.targetVersionId left join Calibration c on c.id = d.calibrationId ";

    /** Of the columns in the order in which the query names them. */
    HistoryVerdict(
            long readingId,
            @Nullable Long speciesId,
            @Nullable State state,
            double amount,
            double low,
            double high,
            @Nullable Integer target,
            @Nullable String certificate,
            @Nullable Double factor,
            @Nullable Instant calibratedAt,
            @Nullable Instant calibratedSince,
            @Nullable Long orderId,
            Instant judgedAt,
            @Nullable Instant replacedAt) {
        this(
                readingId,
                Optional.ofNullable(speciesId),
                Optional.ofNullable(state),
                amount,
                new Interval(low, high),
                Optional.ofNullable(target),
                Optional.ofNullable(certificate),
                Optional.ofNullable(factor),
                Optional.ofNullable(calibratedAt),
                Optional.ofNullable(calibratedSince),
                Optional.ofNullable(orderId),
                judgedAt,
                Optional.ofNullable(replacedAt));
    }

    /** Whether it was what people were told at an instant. */
    boolean stoodAt(Instant at) {
        return !judgedAt.isAfter(at)
                && replacedAt.filter(later -> !later.isAfter(at)).isEmpty();
    }

    boolean isStanding() {
        return replacedAt.isEmpty();
    }

    /** What people were told: for whom, which state, which amount. */
    Told told() {
        return new Told(speciesId, state, amount);
    }

    record Told(Optional<Long> speciesId, Optional<State> state, double amount) {}
}
