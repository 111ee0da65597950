package dapple.evidence;

import dapple.site.Given;
import dapple.site.Line;
import dapple.site.SourceMark;
import dapple.species.UvZone;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * One source about the zone of a species.
 *
 * @param zone method and number, as in SUNBEAM-3
 */
record EvidenceForm(
        @NotNull @Nullable String zone,
        @NotNull @Nullable SourceMark mark,
        @Line @Size(max = 300) String source) {

    static EvidenceForm empty() {
        return new EvidenceForm("", SourceMark.FROM_MEMORY, "");
    }

    NewEvidence evidence(long speciesId, UvZone read, long personId) {
        return new NewEvidence(speciesId, read, Given.of(mark), source.strip(), personId);
    }
}
