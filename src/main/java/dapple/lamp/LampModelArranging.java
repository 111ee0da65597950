package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the lamp models of a site and what they emit, and changes them. */
@Service
class LampModelArranging {
    private static final long NONE = 0;

    private final LampModelRepository models;
    private final LampModelOutputRepository outputs;

    LampModelArranging(LampModelRepository models, LampModelOutputRepository outputs) {
        this.models = models;
        this.outputs = outputs;
    }

    /**
     * Enters a model.
     *
     * @return its id
     * @throws TakenException if the site has a model of this name
     */
    @Transactional
    public long add(long siteId, LampModelChange added) {
        checkIsFree(siteId, added.name(), NONE);
        return store(new LampModel(siteId, added));
    }

    /**
     * Changes what is said of a model.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the model since
     * @throws TakenException if the site has another model of this name
     */
    @Transactional
    public void change(long siteId, long modelId, long version, LampModelChange change) {
        LampModel model = find(siteId, modelId);
        if (model.version() != version) {
            throw new ObjectOptimisticLockingFailureException(LampModel.class, modelId);
        }
        checkIsFree(siteId, change.name(), modelId);
        model.become(change);
        store(model);
    }

    /** What is stated of a quantity, if anything. */
    @Transactional(readOnly = true)
    public StatedOutput output(long siteId, long modelId, Quantity quantity) {
        return StatedOutput.of(outputs.find(siteId, modelId, quantity));
    }

    /** States an output in place of what stood before. */
    @Transactional
    public void stateOutput(long siteId, long modelId, LampOutput output) {
        hold(siteId, modelId);
        LampModelOutput row = outputs.find(siteId, modelId, output.quantity())
                .orElseGet(() -> new LampModelOutput(siteId, modelId, output));
        row.become(output);
        outputs.saveAndFlush(row);
    }

    /**
     * States an output by a form.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed it since
     */
    @Transactional
    public void stateOutput(long siteId, long modelId, long version, LampOutput output) {
        hold(siteId, modelId);
        checkIsAt(siteId, modelId, version, output.quantity());
        stateOutput(siteId, modelId, output);
    }

    /**
     * Takes an output back: it is no longer known.
     *
     * @throws ObjectOptimisticLockingFailureException if somebody has changed it since
     */
    @Transactional
    public void removeOutput(long siteId, long modelId, long version, Quantity quantity) {
        hold(siteId, modelId);
        checkIsAt(siteId, modelId, version, quantity);
        outputs.find(siteId, modelId, quantity).ifPresent(outputs::delete);
    }

    /** The outputs of one model change one at a time. */
    private void hold(long siteId, long modelId) {
        if (models.lockAtSite(siteId, modelId).isEmpty()) {
            throw new NotFoundException();
        }
    }

    private void checkIsAt(long siteId, long modelId, long version, Quantity quantity) {
        if (output(siteId, modelId, quantity).version() != version) {
            throw new ObjectOptimisticLockingFailureException(LampModelOutput.class, modelId);
        }
    }

    private LampModel find(long siteId, long modelId) {
        return models.findAtSite(siteId, modelId).orElseThrow(NotFoundException::new);
    }

    private void checkIsFree(long siteId, String name, long except) {
        if (models.isTaken(siteId, name, except)) {
            throw new TakenException("the site has a lamp model of this name");
        }
    }

    /** Of two who enter one name in the same moment, the constraint of the database stops the second. */
    private long store(LampModel model) {
        try {
            return models.saveAndFlush(model).id();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a lamp model of this name by now");
        }
    }
}
