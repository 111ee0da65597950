package dapple.lamp;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** What is known of the spectrum of a lamp model. */
public sealed interface SpectrumEvidence {
    /** The spectrum itself. */
    record OnFile(long spectrumId, String source, Instant recordedAt, SpectrumFigures figures)
            implements SpectrumEvidence {}

    /** A document about it. */
    record Report(String title, LocalDate day, String by) implements SpectrumEvidence {}

    /** Somebody answers for using the lamp without. */
    record Waived(String by, String reason, Instant at) implements SpectrumEvidence {}

    record Missing() implements SpectrumEvidence {}

    /** Which of these it is, for texts. */
    default String kind() {
        if (this instanceof OnFile) {
            return "SPECTRUM";
        }
        if (this instanceof Report) {
            return "REPORT";
        }
        return this instanceof Waived ? "WAIVER" : "MISSING";
    }

    /** What is stated, and what follows from it by a spectrum on file for quantities that are not. */
    default List<LampOutput> complete(List<LampOutput> stated) {
        return this instanceof OnFile file ? file.figures().complete(stated, file.source()) : List.copyOf(stated);
    }
}
