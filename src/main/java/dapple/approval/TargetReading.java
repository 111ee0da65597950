package dapple.approval;

import dapple.species.UvZone;
import dapple.target.Approval;
import dapple.target.Photoperiod;
import dapple.target.SourcedLimit;
import java.util.List;
import java.util.Optional;
import org.springframework.validation.Errors;

/** Reads a whole form, with a message at each field that wants another look. */
final class TargetReading {
    private final TargetForm form;
    private final Errors errors;

    TargetReading(TargetForm form, Errors errors) {
        this.form = form;
        this.errors = errors;
    }

    /** What is to be approved; none if there are messages. */
    Optional<Approval> approval(long speciesId, long personId) {
        Optional<UvZone> zone = UvZone.withCode(form.zone());
        if (zone.isEmpty()) {
            errors.rejectValue("zone", "evidence.zone.choose");
        }
        List<SourcedLimit> limits = new CellReading(form, errors).limits();
        Optional<Photoperiod> photoperiod = new HoursReading(form, errors).photoperiod();
        return zone.filter(read -> !errors.hasErrors())
                .map(read -> new Approval(
                        speciesId,
                        read,
                        limits,
                        photoperiod,
                        personId,
                        form.reason().strip(),
                        form.isForEarlierReadings()));
    }
}
