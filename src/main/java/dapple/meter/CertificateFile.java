package dapple.meter;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import org.hibernate.annotations.Immutable;

/** The certificate of a calibration as it was filed, without its content. Never edited. */
@Entity
@Immutable
class CertificateFile {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long calibrationId;
    private String name;

    @Enumerated(EnumType.STRING)
    private CertificateKind kind;

    private int sizeBytes;
    private Instant recordedAt;
    private long recordedBy;

    @SuppressWarnings("NullAway.Init")
    protected CertificateFile() {}

    CertificateFile(long siteId, CertificateFacts facts) {
        this.siteId = siteId;
        this.calibrationId = facts.calibrationId();
        this.name = facts.name();
        this.kind = facts.kind();
        this.sizeBytes = facts.sizeBytes();
        this.recordedAt = facts.recordedAt();
        this.recordedBy = facts.recordedBy();
    }

    long id() {
        return id;
    }

    CertificateFacts facts() {
        return new CertificateFacts(calibrationId, name, kind, sizeBytes, recordedAt, recordedBy);
    }
}
