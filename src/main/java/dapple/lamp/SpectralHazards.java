package dapple.lamp;

import dapple.light.dose.KeeperDose.Hazard;
import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.SpectrumSummary;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How dangerous to people the spectra of lamps are. Spectra are never edited, so what was found stays. */
@Service
public class SpectralHazards {
    private static final double SECONDS_PER_MINUTE = 60;

    private final FiledSpectrumRepository spectra;
    private final LampSpectra lampSpectra;
    private final Map<Long, Optional<Hazard>> found = new ConcurrentHashMap<>();

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
        return ofModels(siteId, models).entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().actinicPerUvIndexMinute() / SECONDS_PER_MINUTE));
    }

    /** What a minute at a UV index of 1 does to people, by lamp model; missing are the same models. */
    @Transactional(readOnly = true)
    public Map<Long, Hazard> ofModels(long siteId, Collection<LampModelFacts> models) {
        Map<Long, Hazard> byModel = new HashMap<>();
        for (LampModelFacts model : models) {
            if (model.evidence() instanceof SpectrumEvidence.OnFile file) {
                found.computeIfAbsent(file.spectrumId(), id -> hazard(siteId, id))
                        .ifPresent(hazard -> byModel.put(model.id(), hazard));
            }
        }
        return Map.copyOf(byModel);
    }

    private Optional<Hazard> hazard(long siteId, long spectrumId) {
        return spectra.content(siteId, spectrumId)
                .map(SpectrumText::read)
                .flatMap(SpectralHazards::spectrum)
                .map(lampSpectra::summary)
                .flatMap(SpectralHazards::hazard);
    }

    private static Optional<Spectrum> spectrum(SpectrumText.Outcome outcome) {
        return outcome instanceof SpectrumText.Outcome.Read read ? Optional.of(read.spectrum()) : Optional.empty();
    }

    private static Optional<Hazard> hazard(SpectrumSummary summary) {
        SpectrumFigures figures = SpectrumFigures.of(summary);
        return Optional.ofNullable(figures.uvIndex())
                .filter(uvIndex -> uvIndex > 0)
                .map(uvIndex -> new Hazard(
                        summary.actinicWattsPerSquareMetre() / uvIndex * SECONDS_PER_MINUTE,
                        Optional.ofNullable(figures.uvaWattsPerSquareMetre()).orElse(0.0)
                                / uvIndex
                                * SECONDS_PER_MINUTE,
                        false));
    }
}
