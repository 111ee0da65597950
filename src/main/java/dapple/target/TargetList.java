package dapple.target;

import dapple.evidence.EvidenceFacts;
import dapple.evidence.EvidenceKeeping;
import dapple.species.SpeciesKeeping;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Where the species of a site stand with their targets. */
@Service
public class TargetList {
    private final SpeciesKeeping species;
    private final EvidenceKeeping evidence;
    private final Targets targets;

    TargetList(SpeciesKeeping species, EvidenceKeeping evidence, Targets targets) {
        this.species = species;
        this.evidence = evidence;
        this.targets = targets;
    }

    /** All species of a site, those without a target first, then by scientific name. */
    public List<TargetRow> all(long siteId) {
        Map<Long, VersionDetails> versions = targets.newest(siteId);
        Map<Long, EvidenceFacts> chosen = evidence.chosen(siteId);
        return species.all(siteId).stream()
                .map(one -> new TargetRow(
                        one, Optional.ofNullable(versions.get(one.id())), Optional.ofNullable(chosen.get(one.id()))))
                .sorted(Comparator.comparing(row -> row.version().isPresent()))
                .toList();
    }
}
