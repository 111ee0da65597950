package dapple.evidence;

import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** What one source says of the zone of a species. Never edited. */
@Entity
@Table(name = "species_evidence")
class Evidence {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long speciesId;
    private int uvZone;

    @Enumerated(EnumType.STRING)
    private LightMethod method;

    @Enumerated(EnumType.STRING)
    private SourceMark mark;

    private String source;
    private Instant addedAt;
    private long addedBy;

    @SuppressWarnings("NullAway.Init")
    protected Evidence() {}

    Evidence(long siteId, NewEvidence added, Instant addedAt) {
        this.siteId = siteId;
        this.speciesId = added.speciesId();
        this.uvZone = added.zone().number();
        this.method = added.zone().method();
        this.mark = added.mark();
        this.source = added.source();
        this.addedAt = addedAt;
        this.addedBy = added.personId();
    }

    EvidenceFacts facts() {
        return new EvidenceFacts(id, speciesId, new UvZone(uvZone, method), mark, source, addedAt, addedBy);
    }
}
