package dapple.lamp;

import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.SpectrumSummary;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How dangerous to people the spectra of lamps are. Spectra are never edited, so what was found stays. */
@Service
public class SpectralHazards {
    private final FiledSpectrumRepository spectra;
    private final LampSpectra lampSpectra;
    private final Map<Long, Optional<Double>> found = new ConcurrentHashMap<>();

    SpectralHazards(FiledSpectrumRepository spectra, LampSpectra lampSpectra) {
        this.spectra = spectra;
        this.lampSpectra = lampSpectra;
    }

    /**
     * Irradiance weighted for the hazard to skin and eyes over the UV index, W/m², by lamp model; a model whose spectrum is
     * not on file, or does not cover the UV index, is missing.
     */
    @Transactional(readOnly = true)
    public Map<Long, Double> actinicPerUvIndex(long siteId, Collection<LampModelFacts> models) {
        Map<Long, Double> byModel = new HashMap<>();
        for (LampModelFacts model : models) {
            if (model.evidence() instanceof SpectrumEvidence.OnFile file) {
                found.computeIfAbsent(file.spectrumId(), id -> ratio(siteId, id))
                        .ifPresent(ratio -> byModel.put(model.id(), ratio));
            }
        }
        return Map.copyOf(byModel);
    }

    private Optional<Double> ratio(long siteId, long spectrumId) {
        return spectra.content(siteId, spectrumId)
                .map(SpectrumText::read)
                .flatMap(SpectralHazards::spectrum)
                .map(lampSpectra::summary)
                .flatMap(SpectralHazards::ratio);
    }

    private static Optional<Spectrum> spectrum(SpectrumText.Outcome outcome) {
        return outcome instanceof SpectrumText.Outcome.Read read ? Optional.of(read.spectrum()) : Optional.empty();
    }

    private static Optional<Double> ratio(SpectrumSummary summary) {
        return Optional.ofNullable(SpectrumFigures.of(summary).uvIndex())
                .filter(uvIndex -> uvIndex > 0)
                .map(uvIndex -> summary.actinicWattsPerSquareMetre() / uvIndex);
    }
}
