package dapple.target;

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
import java.util.List;

/** What a species needs, from its approval until the next version's. Never edited. */
@Entity
class TargetVersion {
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
    private long approvedBy;
    private String reason;

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
        this.approvedBy = approval.personId();
        this.reason = approval.reason();
        approval.limits().forEach(limit -> limits.add(new TargetLimit(this, limit)));
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
                limits.stream().map(TargetLimit::sourced).toList());
    }
}
