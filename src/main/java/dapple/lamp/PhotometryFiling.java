package dapple.lamp;

import dapple.site.NotFoundException;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Files what is measured of the beam of a lamp model, which becomes its shape. */
@Service
class PhotometryFiling {
    private final LampModelRepository models;
    private final FiledPhotometryRepository photometry;
    private final Clock clock;

    PhotometryFiling(LampModelRepository models, FiledPhotometryRepository photometry, Clock clock) {
        this.models = models;
        this.photometry = photometry;
        this.clock = clock;
    }

    /** The file that the shape of a model is from. */
    @Transactional(readOnly = true)
    public Optional<PhotometryFiled> filed(long siteId, long modelId) {
        return photometry.ofModel(siteId, modelId);
    }

    /**
     * Files a photometric file in place of the one before; the model's shape follows from it.
     *
     * @param version the version of the model that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the model since
     */
    @Transactional
    public void file(long siteId, long modelId, long version, NewPhotometry added) {
        change(siteId, modelId, version, model -> {
            FiledPhotometry filed = photometry.save(new FiledPhotometry(siteId, added, clock.instant()));
            model.filePhotometry(filed.id(), added.shape());
        });
    }

    /** The shape is no longer known. */
    @Transactional
    public void remove(long siteId, long modelId, long version) {
        change(siteId, modelId, version, LampModel::removePhotometry);
    }

    private void change(long siteId, long modelId, long version, Consumer<LampModel> change) {
        LampModel model = models.lockAtSite(siteId, modelId).orElseThrow(NotFoundException::new);
        if (model.version() != version) {
            throw new ObjectOptimisticLockingFailureException(LampModel.class, modelId);
        }
        change.accept(model);
        models.saveAndFlush(model);
    }
}
