package dapple.prediction;

import dapple.rig.FittingFacts;
import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.Occurrence;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** When a lamp burns, and on which circuit. */
record TimerForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @Nullable LocalTime onAt,
        @Nullable LocalTime offAt,
        @Nullable Long circuitId,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements RigForm {

    static TimerForm of(FittingFacts fitting, LocalDateTime at) {
        TimerFields timer = TimerFields.of(fitting.hanging().timer());
        @Nullable Long circuit = fitting.hanging().circuitId().orElse(null);
        return new TimerForm(null, null, timer.on(), timer.off(), circuit, at, null, null);
    }

    private TimerFields timerFields() {
        return new TimerFields(onAt, offAt);
    }

    @Override
    public void check(Errors errors) {
        timerFields().check(errors);
    }

    @Override
    public RigStep step(long partId) {
        return new LampStep.SetTimer(partId, timerFields().timer(), Optional.ofNullable(circuitId));
    }
}
