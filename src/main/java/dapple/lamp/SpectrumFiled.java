package dapple.lamp;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What lists need of a filed spectrum: all but its content. */
record SpectrumFiled(long id, String source, Instant recordedAt, long recordedBy, SpectrumFigures figures) {
    /** Of what a query that may find none names. */
    static Optional<SpectrumFiled> of(
            @Nullable Long id,
            @Nullable String source,
            @Nullable Instant recordedAt,
            @Nullable Long recordedBy,
            @Nullable SpectrumFigures figures) {
        return id == null || source == null || recordedAt == null || recordedBy == null || figures == null
                ? Optional.empty()
                : Optional.of(new SpectrumFiled(id, source, recordedAt, recordedBy, figures));
    }

    SpectrumEvidence evidence() {
        return new SpectrumEvidence.OnFile(id, source, recordedAt, figures);
    }
}
