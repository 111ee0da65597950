package dapple.lamp;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A document about the spectrum of a lamp model, with the version of the model that the form was made from. */
record ReportForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 200) String title,
        @NotNull @Nullable LocalDate day,
        @Line @Size(max = 120) String by) {

    static ReportForm of(Dossier model) {
        return model.report()
                .map(report ->
                        new ReportForm(model.version(), report.reportTitle(), report.reportOn(), report.reportBy()))
                .orElseGet(() -> new ReportForm(model.version(), "", null, ""));
    }

    ReportForm onVersion(long newVersion) {
        return new ReportForm(newVersion, title, day, by);
    }

    long versionSeen() {
        return Given.of(version);
    }

    LocalDate dayGiven() {
        return Given.of(day);
    }

    ReportOnFile report() {
        return new ReportOnFile(title.strip(), dayGiven(), by.strip());
    }
}
