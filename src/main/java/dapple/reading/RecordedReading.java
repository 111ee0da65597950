package dapple.reading;

import dapple.enclosure.Facing;
import dapple.enclosure.PointFacts;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A reading as it was written down, with what became of it.
 *
 * @param amount as the meter showed it
 * @param takenBy whose visit it was
 * @param nameOnSheet whom the sheet names from which it was imported, where that is nobody known here
 * @param dayOnly whether that sheet knew the day alone
 * @param corrects why it stands in place of another, if it does
 * @param correctedBy the reading that stands in its place
 * @param correctedAt when that was recorded
 */
public record RecordedReading(
        long id,
        long pointId,
        long meterId,
        long takenBy,
        long recordedBy,
        Quantity quantity,
        double amount,
        Facing facing,
        boolean heldAsAsked,
        Instant takenAt,
        Instant recordedAt,
        Optional<String> nameOnSheet,
        boolean dayOnly,
        Optional<String> corrects,
        Optional<Long> correctedBy,
        Optional<Instant> correctedAt,
        Optional<Withdrawal> withdrawal) {

    static final String SELECT =
            "select new dapple.reading.RecordedReading(r.id, r.pointId, r.meterId, v.personId, r.recordedBy, "
                    + "r.quantity, r.amount, r.facing, r.heldAsAsked, r.takenAt, r.recordedAt, v.takenBy, v.dayOnly, r.reason, n.id, "
                    + "n.recordedAt, w.reason, w.recordedAt, w.recordedBy) from Reading r join r.visit v "
                    + "left join Reading n on n.supersedesId = r.id "
                    + "left join ReadingWithdrawal w on w.readingId = r.id ";

    /** Of the columns in the order in which the queries name them. */
    RecordedReading(
            long id,
            long pointId,
            long meterId,
            long takenBy,
            long recordedBy,
            Quantity quantity,
            double amount,
            Facing facing,
            boolean heldAsAsked,
            Instant takenAt,
            Instant recordedAt,
            @Nullable String nameOnSheet,
            boolean dayOnly,
            @Nullable String corrects,
            @Nullable Long correctedBy,
            @Nullable Instant correctedAt,
            @Nullable String withdrawnFor,
            @Nullable Instant withdrawnAt,
            @Nullable Long withdrawnBy) {
        this(
                id,
                pointId,
                meterId,
                takenBy,
                recordedBy,
                quantity,
                amount,
                facing,
                heldAsAsked,
                takenAt,
                recordedAt,
                Optional.ofNullable(nameOnSheet),
                dayOnly,
                Optional.ofNullable(corrects),
                Optional.ofNullable(correctedBy),
                Optional.ofNullable(correctedAt),
                Withdrawal.of(withdrawnFor, withdrawnAt, withdrawnBy));
    }

    /** Whether it counts: nothing stands in its place and nobody has withdrawn it. */
    public boolean isStanding() {
        return correctedBy.isEmpty() && withdrawal.isEmpty();
    }

    /** Whether it counted by what had been recorded at an instant. */
    public boolean stoodAt(Instant at) {
        return !recordedAt.isAfter(at)
                && correctedAt.filter(later -> !later.isAfter(at)).isEmpty()
                && withdrawal.filter(later -> !later.at().isAfter(at)).isEmpty();
    }

    /** Whether somebody of this site took it or put it right; who brings in a sheet has done neither. */
    public boolean isReadBy(long personId) {
        boolean hasTaken = nameOnSheet.isEmpty() && takenBy == personId;
        boolean hasCorrected = corrects.isPresent() && recordedBy == personId;
        return hasTaken || hasCorrected;
    }

    boolean mayBeChangedBy(Visitor visitor) {
        return isStanding()
                && (visitor.supervises() || visitor.personId() == takenBy || visitor.personId() == recordedBy);
    }

    /** Why, when and by whom a reading was withdrawn. */
    public record Withdrawal(String reason, Instant at, long personId) {
        static Optional<Withdrawal> of(@Nullable String reason, @Nullable Instant at, @Nullable Long personId) {
            return reason == null || at == null || personId == null
                    ? Optional.empty()
                    : Optional.of(new Withdrawal(reason, at, personId));
        }
    }

    /** Whether a verdict waits for others of its visit: a gradient point is held against its basking and shade. */
    public boolean isWaiting(HistoryVerdict verdict, PointFacts point) {
        return verdict.state().isEmpty()
                && verdict.speciesId().isPresent()
                && point.role() == PointRole.GRADIENT
                && quantity == Quantity.UV_INDEX
                && heldAsAsked;
    }
}
