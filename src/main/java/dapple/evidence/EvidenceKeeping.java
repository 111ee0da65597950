package dapple.evidence;

import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import dapple.species.SpeciesKeeping;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts evidence about species' zones on record, and which row is chosen. */
@Service
public class EvidenceKeeping {
    private final SpeciesKeeping species;
    private final EvidenceRepository evidence;
    private final EvidenceChoiceRepository choices;
    private final Clock clock;

    EvidenceKeeping(
            SpeciesKeeping species, EvidenceRepository evidence, EvidenceChoiceRepository choices, Clock clock) {
        this.species = species;
        this.evidence = evidence;
        this.choices = choices;
        this.clock = clock;
    }

    /**
     * Puts a row on record. It is not chosen by that.
     *
     * @throws TakenException if this source is on record for the zone already
     */
    @Transactional
    public EvidenceFacts add(long siteId, NewEvidence added) {
        species.hold(siteId, added.speciesId());
        if (evidence.isOnRecord(
                added.speciesId(), added.zone().number(), added.zone().method(), added.source())) {
            throw new TakenException("this source is on record for the zone");
        }
        return evidence.save(new Evidence(siteId, added, clock.instant())).facts();
    }

    /** The row of this source for the zone: the one on record, or a new one. */
    @Transactional
    public EvidenceFacts onRecord(long siteId, NewEvidence wanted) {
        return of(siteId, wanted.speciesId()).stream()
                .filter(row -> row.zone().equals(wanted.zone()) && row.source().equals(wanted.source()))
                .findFirst()
                .orElseGet(() -> add(siteId, wanted));
    }

    /**
     * Chooses the row that holds from now on; targets in force stay as they are.
     *
     * @throws ConflictException if somebody has chosen since the person looked
     */
    @Transactional
    public ChoiceFacts choose(long siteId, NewChoice choice) {
        species.hold(siteId, choice.speciesId());
        Evidence chosen =
                evidence.find(siteId, choice.speciesId(), choice.evidenceId()).orElseThrow(NotFoundException::new);
        List<ChoiceFacts> before = choices(siteId, choice.speciesId());
        if (!before.isEmpty() && before.get(0).is(choice)) {
            return before.get(0);
        }
        int holding = before.isEmpty() ? 0 : before.get(0).number();
        if (holding != choice.seen()) {
            throw new ConflictException("another row has been chosen since");
        }
        return choices.save(new EvidenceChoice(siteId, chosen, choice, clock.instant()))
                .facts();
    }

    /** The rows of a species, oldest first. */
    @Transactional(readOnly = true)
    public List<EvidenceFacts> of(long siteId, long speciesId) {
        return evidence.of(siteId, speciesId).stream().map(Evidence::facts).toList();
    }

    /** All choices for a species, the one that holds first. */
    @Transactional(readOnly = true)
    public List<ChoiceFacts> choices(long siteId, long speciesId) {
        return choices.newestFirst(siteId, speciesId).stream()
                .map(EvidenceChoice::facts)
                .toList();
    }

    /** The rows that hold at a site, by species; a species for which none is chosen is missing. */
    @Transactional(readOnly = true)
    public Map<Long, EvidenceFacts> chosen(long siteId) {
        return choices.holding(siteId).stream()
                .map(choice -> choice.facts().evidence())
                .collect(Collectors.toMap(EvidenceFacts::speciesId, facts -> facts));
    }
}
