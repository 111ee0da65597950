package dapple.lamp;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A spectrum as it was filed. Never edited: a model takes a later one in its place. */
@Entity
@Table(name = "lamp_spectrum")
class FiledSpectrum {
    static final int MOST_CHARACTERS = 200_000;

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private String source;

    @Column(length = MOST_CHARACTERS)
    private String content;

    private Instant recordedAt;
    private long recordedBy;

    @Embedded
    private SpectrumFigures figures;

    @SuppressWarnings("NullAway.Init")
    protected FiledSpectrum() {}

    FiledSpectrum(long siteId, NewSpectrum added, SpectrumFigures figures, Instant recordedAt) {
        this.siteId = siteId;
        this.source = added.source();
        this.content = added.content();
        this.figures = figures;
        this.recordedAt = recordedAt;
        this.recordedBy = added.personId();
    }

    long id() {
        return id;
    }
}
