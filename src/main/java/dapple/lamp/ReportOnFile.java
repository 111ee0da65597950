package dapple.lamp;

import jakarta.persistence.Embeddable;
import java.time.LocalDate;

/** A document about the spectrum of a lamp model: its title, its date, who wrote it. */
@Embeddable
record ReportOnFile(String reportTitle, LocalDate reportOn, String reportBy) {
    SpectrumEvidence evidence() {
        return new SpectrumEvidence.Report(reportTitle, reportOn, reportBy);
    }
}
