package dapple.confirmation;

import dapple.evidence.EvidenceFacts;
import dapple.evidence.EvidenceKeeping;
import dapple.evidence.NewChoice;
import dapple.evidence.NewEvidence;
import dapple.species.Library;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesKeeping;
import dapple.species.Taxon;
import dapple.target.Approval;
import dapple.target.TargetList;
import dapple.target.TargetRow;
import dapple.target.Targets;
import dapple.target.ZoneLimits;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Turns suggested zones into first targets, by a person's name and reason. */
@Service
public class Confirming {
    private static final String LIBRARY = "Library of the program";
    private static final int LONGEST_SOURCE = 300;

    private final SpeciesKeeping species;
    private final EvidenceKeeping evidence;
    private final Targets targets;
    private final TargetList list;
    private final ZoneLimits zoneLimits;
    private final Library library;

    Confirming(
            SpeciesKeeping species,
            EvidenceKeeping evidence,
            Targets targets,
            TargetList list,
            ZoneLimits zoneLimits,
            Library library) {
        this.species = species;
        this.evidence = evidence;
        this.targets = targets;
        this.list = list;
        this.zoneLimits = zoneLimits;
        this.library = library;
    }

    /** The species without a target, by scientific name. */
    public List<Candidate> candidates(long siteId) {
        return list.all(siteId).stream()
                .filter(row -> row.version().isEmpty())
                .map(row -> candidate(row.species(), row.chosen()))
                .toList();
    }

    /** The species whose chosen evidence names another zone than their target. */
    public List<TargetRow> behindEvidence(long siteId) {
        return list.all(siteId).stream().filter(TargetRow::isBehindEvidence).toList();
    }

    /**
     * Makes the first target of each species, with the limits of its zone: of all, or of none. A zone that the library
     * suggests becomes evidence on record, chosen by the same person.
     *
     * @throws ConfirmedMeanwhileException if a species has got a target or another suggestion since
     */
    @Transactional
    public void confirm(long siteId, Confirmation confirmation) {
        confirmation.zones().stream()
                .sorted(Comparator.comparing(Confirmed::speciesId))
                .forEach(confirmed -> confirm(siteId, confirmation, confirmed));
    }

    private void confirm(long siteId, Confirmation confirmation, Confirmed confirmed) {
        SpeciesFacts held = species.hold(siteId, confirmed.speciesId());
        Optional<EvidenceFacts> chosen = chosen(siteId, held);
        Candidate candidate = candidate(held, chosen);
        if (targets.newest(siteId, held.id()).isPresent() || !candidate.zones().contains(confirmed.zone())) {
            throw new ConfirmedMeanwhileException(held);
        }
        if (chosen.isEmpty()) {
            candidate.taxon().ifPresent(taxon -> record(siteId, confirmation, confirmed, taxon));
        }
        targets.approve(
                siteId,
                new Approval(
                                held.id(),
                                confirmed.zone(),
                                zoneLimits.of(confirmed.zone()),
                                confirmation.personId(),
                                confirmation.reason())
                        .forEarlierReadings(confirmation.isForEarlierReadings()));
    }

    private Optional<EvidenceFacts> chosen(long siteId, SpeciesFacts held) {
        return evidence.choices(siteId, held.id()).stream().findFirst().map(choice -> choice.evidence());
    }

    private Candidate candidate(SpeciesFacts one, Optional<EvidenceFacts> chosen) {
        return new Candidate(one, chosen, library.find(one.scientificName()));
    }

    private void record(long siteId, Confirmation confirmation, Confirmed confirmed, Taxon taxon) {
        String source = taxon.note().isEmpty() ? LIBRARY : LIBRARY + ": " + taxon.note();
        EvidenceFacts added = evidence.onRecord(
                siteId,
                new NewEvidence(
                        confirmed.speciesId(),
                        confirmed.zone(),
                        taxon.mark(),
                        source.substring(0, Math.min(LONGEST_SOURCE, source.length())),
                        confirmation.personId()));
        evidence.choose(
                siteId,
                new NewChoice(confirmed.speciesId(), 0, added.id(), confirmation.reason(), confirmation.personId()));
    }
}
