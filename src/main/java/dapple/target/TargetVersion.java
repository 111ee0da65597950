package dapple.target;

import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.OneToMany;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a species needs, from its approval or the start of the record until the next version's approval. Never edited. */
@Entity
class TargetVersion {
    private static final Comparator<SourcedLimit> BY_QUANTITY =
            Comparator.comparing(SourcedLimit::quantity).thenComparing(SourcedLimit::place);

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long speciesId;
    private int number;

    @Enumerated(EnumType.STRING)
    private LightMethod method;

    private int uvZone;
    private Instant approvedAt;
    private Instant inForceFrom;
    private long approvedBy;
    private String reason;

    @Enumerated(EnumType.STRING)
    private @Nullable SourceMark photoperiodMark;

    private @Nullable String photoperiodSource;

    @OneToMany(mappedBy = "version", cascade = CascadeType.PERSIST, fetch = FetchType.LAZY)
    private final List<DayLength> dayLengths = new ArrayList<>();

    @OneToMany(mappedBy = "version", cascade = CascadeType.PERSIST, fetch = FetchType.LAZY)
    private final List<TargetLimit> limits = new ArrayList<>();

    @SuppressWarnings("NullAway.Init")
    protected TargetVersion() {}

    TargetVersion(long siteId, int number, Approval approval, Instant approvedAt) {
        this.siteId = siteId;
        this.speciesId = approval.speciesId();
        this.number = number;
        this.method = approval.zone().method();
        this.uvZone = approval.zone().number();
        this.approvedAt = approvedAt;
        this.inForceFrom = approval.isForEarlierReadings() ? Target.START_OF_RECORD : approvedAt;
        this.approvedBy = approval.personId();
        this.reason = approval.reason();
        approval.limits().forEach(limit -> limits.add(new TargetLimit(this, limit)));
        approval.photoperiod().ifPresent(this::light);
    }

    private void light(Photoperiod photoperiod) {
        this.photoperiodMark = photoperiod.mark();
        this.photoperiodSource = photoperiod.source();
        for (int month = 1; month <= Photoperiod.MONTHS; month++) {
            dayLengths.add(new DayLength(this, month, photoperiod.hours().get(month - 1)));
        }
    }

    int number() {
        return number;
    }

    Target target() {
        return new Target(
                id,
                speciesId,
                number,
                new UvZone(uvZone, method),
                approvedAt,
                inForceFrom,
                limits.stream().map(TargetLimit::sourced).sorted(BY_QUANTITY).toList());
    }

    /** What it says of a month of so many hours of light. */
    Optional<LightHours> light(double hours) {
        return photoperiodMark == null || photoperiodSource == null
                ? Optional.empty()
                : Optional.of(new LightHours(hours, photoperiodMark, photoperiodSource));
    }

    VersionDetails details() {
        return new VersionDetails(target(), photoperiod(), approvedBy, reason);
    }

    private Optional<Photoperiod> photoperiod() {
        if (photoperiodMark == null || photoperiodSource == null) {
            return Optional.empty();
        }
        List<Double> hours = dayLengths.stream()
                .sorted(Comparator.comparingInt(DayLength::monthNumber))
                .map(DayLength::lightHours)
                .toList();
        return Optional.of(new Photoperiod(hours, photoperiodMark, photoperiodSource));
    }
}
