package dapple.reading;

import dapple.light.judging.Judgement;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.State;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A reading with its verdict for one species: what pages show.
 *
 * @param stateSince since when the point has been in this state, where it is the newest reading there
 */
public record JudgedReading(
        long readingId,
        long enclosureId,
        long pointId,
        long meterId,
        long personId,
        Quantity quantity,
        Instant takenAt,
        long verdictId,
        Optional<Long> speciesId,
        Optional<Long> targetVersionId,
        Optional<Long> orderId,
        MeasuredAmount measured,
        Judgement judgement,
        boolean heldAsAsked,
        Optional<Instant> stateSince) {

    /** Of the columns of a reading, a verdict and the newest of a point, in the order in which the queries name them. */
    JudgedReading(
            long readingId,
            long enclosureId,
            long pointId,
            long meterId,
            long personId,
            Quantity quantity,
            Instant takenAt,
            long verdictId,
            @Nullable Long speciesId,
            @Nullable Long targetVersionId,
            @Nullable Long orderId,
            @Nullable State state,
            double amount,
            double low,
            double high,
            boolean mayExceed,
            boolean finerThanMeter,
            boolean noGradient,
            boolean heldAsAsked,
            @Nullable Instant stateSince) {
        this(
                readingId,
                enclosureId,
                pointId,
                meterId,
                personId,
                quantity,
                takenAt,
                verdictId,
                Optional.ofNullable(speciesId),
                Optional.ofNullable(targetVersionId),
                Optional.ofNullable(orderId),
                new MeasuredAmount(amount, new Interval(low, high)),
                new Judgement(Optional.ofNullable(state), mayExceed, finerThanMeter, noGradient),
                heldAsAsked,
                Optional.ofNullable(stateSince));
    }

    public Optional<State> state() {
        return judgement.state();
    }

    /** The same as it stands once what is needed there has changed: to be read again. */
    public JudgedReading stale() {
        return new JudgedReading(
                readingId,
                enclosureId,
                pointId,
                meterId,
                personId,
                quantity,
                takenAt,
                verdictId,
                speciesId,
                targetVersionId,
                orderId,
                measured,
                Judgement.of(State.STALE),
                heldAsAsked,
                stateSince);
    }

    public double amount() {
        return measured.amount();
    }

    public Interval interval() {
        return measured.interval();
    }
}
