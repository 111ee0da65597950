package dapple.lamp;

import dapple.site.NotFoundException;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Files what is known of the spectrum of a lamp model: the spectrum itself, a report, or who answers for using it without. */
@Service
public class SpectrumFiling {
    private final LampModelRepository models;
    private final FiledSpectrumRepository spectra;
    private final LampSpectra judging;
    private final Clock clock;

    SpectrumFiling(LampModelRepository models, FiledSpectrumRepository spectra, LampSpectra judging, Clock clock) {
        this.models = models;
        this.spectra = spectra;
        this.judging = judging;
        this.clock = clock;
    }

    /** What is filed of a model. */
    @Transactional(readOnly = true)
    public Dossier dossier(long siteId, long modelId) {
        LampModel model = models.findAtSite(siteId, modelId).orElseThrow(NotFoundException::new);
        Optional<SpectrumFiled> filed =
                model.spectrumId().isPresent() ? spectra.ofModel(siteId, modelId) : Optional.empty();
        return new Dossier(model.version(), model.state(), filed, model.report(), model.waiver());
    }

    /** The spectrum of a model, judged anew. */
    @Transactional(readOnly = true)
    public Optional<SpectrumShown> shown(long siteId, Dossier dossier) {
        return dossier.spectrum()
                .flatMap(filed -> spectra.content(siteId, filed.id()))
                .map(SpectrumText::read)
                .filter(SpectrumText.Outcome.Read.class::isInstance)
                .map(SpectrumText.Outcome.Read.class::cast)
                .map(read -> judging.shown(read.spectrum()));
    }

    /**
     * Files a spectrum in place of the one before.
     *
     * @param version the version of the model that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the model since
     */
    @Transactional
    public void fileSpectrum(long siteId, long modelId, long version, NewSpectrum added) {
        change(siteId, modelId, version, model -> {
            SpectrumFigures figures = SpectrumFigures.of(judging.summary(added.spectrum()));
            FiledSpectrum filed = spectra.save(new FiledSpectrum(siteId, added, figures, clock.instant()));
            model.fileSpectrum(filed.id());
        });
    }

    @Transactional
    public void removeSpectrum(long siteId, long modelId, long version) {
        change(siteId, modelId, version, LampModel::removeSpectrum);
    }

    @Transactional
    public void fileReport(long siteId, long modelId, long version, ReportOnFile report) {
        change(siteId, modelId, version, model -> model.fileReport(report));
    }

    @Transactional
    public void removeReport(long siteId, long modelId, long version) {
        change(siteId, modelId, version, LampModel::removeReport);
    }

    /** A person signs that a lamp model is used without its spectrum being known. */
    @Transactional
    public void waive(long siteId, long modelId, long version, String reason, Signer signer) {
        Waiver waiver = new Waiver(reason, clock.instant(), signer.personId(), signer.name());
        change(siteId, modelId, version, model -> model.waive(waiver));
    }

    @Transactional
    public void takeBackWaiver(long siteId, long modelId, long version) {
        change(siteId, modelId, version, LampModel::takeBackWaiver);
    }

    private void change(long siteId, long modelId, long version, Consumer<LampModel> change) {
        LampModel model = models.lockAtSite(siteId, modelId).orElseThrow(NotFoundException::new);
        if (model.version() != version) {
            throw new ObjectOptimisticLockingFailureException(LampModel.class, modelId);
        }
        change.accept(model);
        models.saveAndFlush(model);
    }

    /** Who signs, and under which name. */
    record Signer(long personId, String name) {}
}
