package dapple.lamp;

import dapple.lamp.StatedModel.OwnedLamp;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The lamps of a site and their models, for all who need to know what hangs and shines. */
@Service
public class Lamps {
    private final LampModelArranging arrangingModels;
    private final LampArranging arranging;
    private final LampModelRepository models;
    private final LampModelOutputRepository outputs;
    private final FiledSpectrumRepository spectra;
    private final LampRepository lamps;
    private final OwnOutputRepository measured;
    private final LampMeasuring measuring;

    Lamps(
            LampModelArranging arrangingModels,
            LampArranging arranging,
            LampModelRepository models,
            LampModelOutputRepository outputs,
            FiledSpectrumRepository spectra,
            LampRepository lamps,
            OwnOutputRepository measured,
            LampMeasuring measuring) {
        this.arrangingModels = arrangingModels;
        this.arranging = arranging;
        this.models = models;
        this.outputs = outputs;
        this.spectra = spectra;
        this.lamps = lamps;
        this.measured = measured;
        this.measuring = measuring;
    }

    /**
     * Enters a lamp model.
     *
     * @return its id
     */
    @Transactional
    public long addModel(long siteId, LampModelChange added) {
        return arrangingModels.add(siteId, added);
    }

    /** Says what lamps of a model give of a quantity, in place of what was said before. */
    @Transactional
    public void stateOutput(long siteId, long modelId, LampOutput output) {
        arrangingModels.stateOutput(siteId, modelId, output);
    }

    /**
     * Enters a lamp.
     *
     * @return its id
     */
    @Transactional
    public long add(long siteId, NewLamp added) {
        return arranging.add(siteId, added);
    }

    /**
     * Records what was measured of a lamp; the newest of each quantity stands.
     *
     * @return its id
     * @throws ConflictException if something else was measured of it at the same instant
     */
    @Transactional
    public long measure(long siteId, long lampId, LampOutput output, Instant measuredAt, long personId) {
        LampMeasuring.Outcome outcome = measuring.record(siteId, lampId, output, measuredAt, personId);
        if (outcome instanceof LampMeasuring.Outcome.Stored stored) {
            return stored.id();
        }
        throw new ConflictException("something else was measured of the lamp at this instant");
    }

    /** Holds a lamp for the rest of the transaction, so that what becomes of it changes one at a time. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lock(long siteId, long lampId) {
        if (lamps.lockAtSite(siteId, lampId).isEmpty()) {
            throw new NotFoundException();
        }
    }

    /** All models by name. */
    @Transactional(readOnly = true)
    public List<LampModelFacts> models(long siteId) {
        return modelsById(siteId).values().stream()
                .sorted(Comparator.comparing(LampModelFacts::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(LampModelFacts::id))
                .toList();
    }

    @Transactional(readOnly = true)
    public LampModelFacts model(long siteId, long modelId) {
        LampModel model = models.findAtSite(siteId, modelId).orElseThrow(NotFoundException::new);
        List<LampOutput> stated = outputs.ofModel(siteId, modelId).stream()
                .map(LampModelOutput::output)
                .toList();
        Optional<SpectrumFiled> spectrum =
                model.spectrumId().isPresent() ? spectra.ofModel(siteId, modelId) : Optional.empty();
        return model.facts(stated, spectrum);
    }

    /** A lamp, in use or not. */
    @Transactional(readOnly = true)
    public LampFacts get(long siteId, long lampId) {
        Lamp lamp = lamps.findAtSite(siteId, lampId).orElseThrow(NotFoundException::new);
        return facts(lamp, model(siteId, lamp.state().modelId()), measured.standing(siteId, lampId));
    }

    /** A lamp as those see it who keep it. */
    @Transactional(readOnly = true)
    public LampDetails details(long siteId, long lampId) {
        return arranging.get(siteId, lampId);
    }

    /** All that was measured of a lamp, newest first. */
    @Transactional(readOnly = true)
    public List<MeasuredOutput> measured(long siteId, long lampId) {
        return measuring.all(siteId, lampId);
    }

    /** All lamps that a site has or had, by id. */
    @Transactional(readOnly = true)
    public Map<Long, LampFacts> byId(long siteId) {
        return entered(siteId).collect(Collectors.toMap(LampFacts::id, Function.identity()));
    }

    /** The same, where all models of the site are at hand. */
    @Transactional(readOnly = true)
    public Map<Long, LampFacts> byId(long siteId, Map<Long, LampModelFacts> byModel) {
        return entered(siteId, byModel).collect(Collectors.toMap(LampFacts::id, Function.identity()));
    }

    /** Some lamps that a site has or had, by id. */
    @Transactional(readOnly = true)
    public Map<Long, LampFacts> byId(long siteId, Collection<Long> lampIds) {
        if (lampIds.isEmpty()) {
            return Map.of();
        }
        return lamps.some(siteId, lampIds).stream()
                .collect(Collectors.groupingBy(row -> row.lamp().id()))
                .values()
                .stream()
                .map(Lamps::hung)
                .collect(Collectors.toMap(LampFacts::id, Function.identity()));
    }

    /** The lamps in use, by tag. */
    @Transactional(readOnly = true)
    public List<LampFacts> inUse(long siteId) {
        return byTag(entered(siteId).filter(LampFacts::isInUse));
    }

    /** The lamps that a site has or had, by tag. */
    @Transactional(readOnly = true)
    public List<LampFacts> all(long siteId) {
        return byTag(entered(siteId));
    }

    /** The lamps of a model, in use and not, by tag. */
    @Transactional(readOnly = true)
    public List<LampFacts> ofModel(long siteId, LampModelFacts model) {
        Map<Long, List<OwnOutput>> byLamp =
                measured.standing(siteId).stream().collect(Collectors.groupingBy(OwnOutput::lampId));
        return byTag(lamps.ofModel(siteId, model.id()).stream()
                .map(lamp -> facts(lamp, model, byLamp.getOrDefault(lamp.id(), List.of()))));
    }

    private static List<LampFacts> byTag(Stream<LampFacts> lamps) {
        return lamps.sorted(Comparator.comparing(LampFacts::tag, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(LampFacts::id))
                .toList();
    }

    private Stream<LampFacts> entered(long siteId) {
        return entered(siteId, modelsById(siteId));
    }

    private Stream<LampFacts> entered(long siteId, Map<Long, LampModelFacts> byModel) {
        return OwnedLamp.facts(lamps.all(siteId), byModel);
    }

    /** One lamp of its rows, each with one output of the model and one of its own. */
    private static LampFacts hung(List<HungLamp> rows) {
        HungLamp row = rows.get(0);
        List<LampOutput> stated = rows.stream()
                .flatMap(one -> one.stated().stream())
                .distinct()
                .map(LampModelOutput::output)
                .toList();
        List<OwnOutput> own =
                rows.stream().flatMap(one -> one.own().stream()).distinct().toList();
        return facts(row.lamp(), row.model().facts(stated, row.spectrum()), own);
    }

    static LampFacts facts(Lamp lamp, LampModelFacts model, List<OwnOutput> measured) {
        NewLamp state = lamp.state();
        return new LampFacts(
                lamp.id(),
                state.tag(),
                model,
                state.burnHoursAtEntry(),
                state.boughtOn(),
                measured.stream().map(OwnOutput::output).toList(),
                lamp.retiredAt());
    }

    private Map<Long, LampModelFacts> modelsById(long siteId) {
        return StatedModel.byId(models.all(siteId));
    }
}
