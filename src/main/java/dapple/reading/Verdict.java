package dapple.reading;

import dapple.light.judging.Judgement;
import dapple.light.judging.MeasuredAmount;
import dapple.light.judging.State;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a reading was judged to be for a species, and by which target and calibration. */
@Entity
class Verdict {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long readingId;
    private @Nullable Long speciesId;
    private @Nullable Long targetVersionId;
    private @Nullable Long calibrationId;
    private @Nullable Long rigId;
    private @Nullable Long vetOrderId;

    @Enumerated(EnumType.STRING)
    private @Nullable State state;

    /** Of the range in which the meter showed the amount; none: without a calibration. */
    private @Nullable Double factor;

    private double amount;
    private double low;
    private double high;
    private boolean mayExceed;
    private boolean finerThanMeter;
    private boolean noGradient;
    private Instant judgedAt;
    private @Nullable Instant replacedAt;

    @SuppressWarnings("NullAway.Init")
    protected Verdict() {}

    Verdict(long siteId, Finding finding, Instant judgedAt) {
        this.siteId = siteId;
        this.readingId = finding.shown().id();
        Basis basis = finding.basis();
        this.speciesId = basis.speciesId();
        this.targetVersionId = basis.targetVersionId();
        this.calibrationId = basis.calibrationId();
        this.rigId = basis.rigId();
        this.vetOrderId = basis.vetOrderId();
        Judgement judgement = finding.judgement();
        this.state = judgement.state().orElse(null);
        MeasuredAmount measured = finding.corrected().measured();
        this.factor = finding.corrected().factor().orElse(null);
        this.amount = measured.amount();
        this.low = measured.interval().low();
        this.high = measured.interval().high();
        this.mayExceed = judgement.mayExceed();
        this.finerThanMeter = judgement.finerThanMeter();
        this.noGradient = judgement.noGradient();
        this.judgedAt = judgedAt;
    }

    long readingId() {
        return readingId;
    }

    void replace(Instant at) {
        this.replacedAt = at;
    }

    /** Whether both say the same on the same grounds, whenever they were made. */
    boolean saysTheSameAs(Verdict other) {
        return grounds().equals(other.grounds()) && findings().equals(other.findings());
    }

    private Basis grounds() {
        return new Basis(speciesId, targetVersionId, calibrationId, rigId, vetOrderId);
    }

    private Findings findings() {
        return new Findings(state, amount, low, high, mayExceed, finerThanMeter, noGradient);
    }

    /** What a reading is judged by: species, target version, calibration, rig and vet's order, as far as there are any. */
    record Basis(
            @Nullable Long speciesId,
            @Nullable Long targetVersionId,
            @Nullable Long calibrationId,
            @Nullable Long rigId,
            @Nullable Long vetOrderId) {}

    /**
     * A reading by its calibration.
     *
     * @param factor true value over displayed value; none: without a calibration
     */
    record Corrected(Optional<Double> factor, MeasuredAmount measured) {}

    private record Findings(
            @Nullable State state,
            double amount,
            double low,
            double high,
            boolean mayExceed,
            boolean finerThanMeter,
            boolean noGradient) {}
}
