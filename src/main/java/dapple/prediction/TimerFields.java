package dapple.prediction;

import dapple.rig.DailyTimer;
import java.time.LocalTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** When a lamp burns, as forms ask for it: both times, or none where it is not known. */
record TimerFields(@Nullable LocalTime on, @Nullable LocalTime off) {
    static TimerFields of(Optional<DailyTimer> timer) {
        return new TimerFields(
                timer.map(DailyTimer::on).orElse(null),
                timer.map(DailyTimer::off).orElse(null));
    }

    void check(Errors errors) {
        boolean one = on != null;
        boolean other = off != null;
        if (one && !other && !errors.hasFieldErrors("offAt")) {
            errors.rejectValue("offAt", "rig.timer.both");
        }
        if (other && !one && !errors.hasFieldErrors("onAt")) {
            errors.rejectValue("onAt", "rig.timer.both");
        }
    }

    Optional<DailyTimer> timer() {
        return on == null || off == null ? Optional.empty() : Optional.of(new DailyTimer(on, off));
    }
}
