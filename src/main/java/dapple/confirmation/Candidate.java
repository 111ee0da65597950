package dapple.confirmation;

import dapple.evidence.EvidenceFacts;
import dapple.site.SourceMark;
import dapple.species.SpeciesFacts;
import dapple.species.Taxon;
import dapple.species.UvZone;
import java.util.List;
import java.util.Optional;

/** A species without a target, with what is suggested for it: by chosen evidence, else by the library. */
public record Candidate(SpeciesFacts species, Optional<EvidenceFacts> chosen, Optional<Taxon> taxon) {
    /** The zones that can be confirmed, the suggested one first; none: evidence is needed first. */
    public List<UvZone> zones() {
        return chosen.map(EvidenceFacts::zone)
                .filter(UvZone::isUsual)
                .map(List::of)
                .orElseGet(() -> taxon.map(Taxon::suggestions).orElse(List.of()));
    }

    public Optional<SourceMark> mark() {
        return chosen.map(EvidenceFacts::mark).or(() -> taxon.map(Taxon::mark));
    }

    /** What the evidence or the library says beside the zone; may be empty. */
    public String source() {
        return chosen.map(EvidenceFacts::source)
                .or(() -> taxon.map(Taxon::note))
                .orElse("");
    }
}
