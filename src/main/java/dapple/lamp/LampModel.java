package dapple.lamp;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.List;
import java.util.Optional;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;

/** What is bought: lamps of one make behave alike. Its outputs are rows of their own. */
@Entity
@Audited
class LampModel {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private String name;

    @Enumerated(EnumType.STRING)
    private LampClass lampClass;

    private @Nullable Double watts;

    @Embedded
    private @Nullable StoredShape shape;

    private @Nullable Long spectrumId;

    /** The file that the shape is from. */
    private @Nullable Long photometryId;

    @Embedded
    private @Nullable ReportOnFile report;

    @Embedded
    private @Nullable Waiver waiver;

    @Version
    private long version;

    @SuppressWarnings("NullAway.Init")
    protected LampModel() {}

    LampModel(long siteId, LampModelChange said) {
        this.siteId = siteId;
        become(said);
    }

    final void become(LampModelChange said) {
        this.name = said.name();
        this.lampClass = said.lampClass();
        this.watts = said.watts().orElse(null);
        this.shape = said.shape().map(StoredShape::of).orElse(null);
        if (said.shape().filter(LampShape.Measured.class::isInstance).isEmpty()) {
            this.photometryId = null;
        }
    }

    void filePhotometry(long newPhotometryId, LampShape.Measured measured) {
        this.photometryId = newPhotometryId;
        this.shape = StoredShape.of(measured);
    }

    void removePhotometry() {
        if (photometryId != null) {
            this.photometryId = null;
            this.shape = null;
        }
    }

    void fileSpectrum(long newSpectrumId) {
        this.spectrumId = newSpectrumId;
    }

    void removeSpectrum() {
        this.spectrumId = null;
    }

    void fileReport(ReportOnFile filed) {
        this.report = filed;
    }

    void removeReport() {
        this.report = null;
    }

    void waive(Waiver signed) {
        this.waiver = signed;
    }

    void takeBackWaiver() {
        this.waiver = null;
    }

    long id() {
        return id;
    }

    long version() {
        return version;
    }

    LampModelChange state() {
        return new LampModelChange(
                name,
                lampClass,
                Optional.ofNullable(watts),
                Optional.ofNullable(shape).map(StoredShape::shape));
    }

    Optional<ReportOnFile> report() {
        return Optional.ofNullable(report);
    }

    Optional<Waiver> waiver() {
        return Optional.ofNullable(waiver);
    }

    Optional<Long> spectrumId() {
        return Optional.ofNullable(spectrumId);
    }

    /** With its outputs, and those that follow from its spectrum. */
    LampModelFacts facts(List<LampOutput> stated, Optional<SpectrumFiled> spectrum) {
        LampModelChange state = state();
        SpectrumEvidence evidence = evidence(spectrum);
        return new LampModelFacts(
                id, state.name(), state.lampClass(), state.watts(), state.shape(), evidence.complete(stated), evidence);
    }

    /** The best there is. */
    private SpectrumEvidence evidence(Optional<SpectrumFiled> spectrum) {
        return spectrum.map(SpectrumFiled::evidence)
                .or(() -> report().map(ReportOnFile::evidence))
                .or(() -> waiver().map(Waiver::evidence))
                .orElseGet(SpectrumEvidence.Missing::new);
    }
}
