package dapple.lamp;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A lamp with its model and the spectrum that the model has on file. */
record HungLamp(Lamp lamp, LampModel model, Optional<SpectrumFiled> spectrum) {
    /** Of what the query names; without a spectrum its columns are empty. */
    HungLamp(
            Lamp lamp,
            LampModel model,
            @Nullable Long spectrumId,
            @Nullable String source,
            @Nullable Instant recordedAt,
            @Nullable Long recordedBy,
            @Nullable SpectrumFigures figures) {
        this(lamp, model, filed(spectrumId, source, recordedAt, recordedBy, figures));
    }

    private static Optional<SpectrumFiled> filed(
            @Nullable Long id,
            @Nullable String source,
            @Nullable Instant recordedAt,
            @Nullable Long recordedBy,
            @Nullable SpectrumFigures figures) {
        return id == null || source == null || recordedAt == null || recordedBy == null || figures == null
                ? Optional.empty()
                : Optional.of(new SpectrumFiled(id, source, recordedAt, recordedBy, figures));
    }
}
