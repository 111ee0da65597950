package dapple.lamp;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A lamp with its model and the spectrum that the model has on file.
 *
 * @param stated one of the outputs that the model states
 * @param own one of those that were measured of the lamp and stand
 */
record HungLamp(
        Lamp lamp,
        LampModel model,
        Optional<LampModelOutput> stated,
        Optional<OwnOutput> own,
        Optional<SpectrumFiled> spectrum) {
    /** Of what the query names; what a lamp does not have is empty. */
    HungLamp(
            Lamp lamp,
            LampModel model,
            @Nullable LampModelOutput stated,
            @Nullable OwnOutput own,
            @Nullable Long spectrumId,
            @Nullable String source,
            @Nullable Instant recordedAt,
            @Nullable Long recordedBy,
            @Nullable SpectrumFigures figures) {
        this(
                lamp,
                model,
                Optional.ofNullable(stated),
                Optional.ofNullable(own),
                SpectrumFiled.of(spectrumId, source, recordedAt, recordedBy, figures));
    }
}
