package dapple.prediction;

import dapple.rig.DailyTimer;
import dapple.rig.HomeDayTimer;
import dapple.rig.LampTimer;
import dapple.rig.MonthlyTimer;
import dapple.site.Given;
import java.time.LocalTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * When a lamp burns, as forms ask for it.
 *
 * @param kind empty: the same times every day
 * @param on with off, or neither where it is not known
 */
record TimerFields(
        @Nullable TimerKind kind,
        @Nullable LocalTime on,
        @Nullable LocalTime off,
        MonthFields months,
        HomeDayFields home) {
    private static final TimerFields NONE =
            new TimerFields(TimerKind.DAILY, null, null, MonthFields.NONE, HomeDayFields.NONE);

    static TimerFields of(Optional<LampTimer> timer) {
        return timer.map(TimerFields::of).orElse(NONE);
    }

    private static TimerFields of(LampTimer timer) {
        if (timer instanceof DailyTimer daily) {
            return new TimerFields(TimerKind.DAILY, daily.on(), daily.off(), MonthFields.NONE, HomeDayFields.NONE);
        }
        if (timer instanceof MonthlyTimer monthly) {
            return new TimerFields(TimerKind.MONTHLY, null, null, MonthFields.of(monthly), HomeDayFields.NONE);
        }
        HomeDayFields day = HomeDayFields.of((HomeDayTimer) timer);
        return new TimerFields(TimerKind.HOME_DAY, null, null, MonthFields.NONE, day);
    }

    void check(Errors errors) {
        if (kind == TimerKind.MONTHLY) {
            months.wrong().forEach(month -> errors.rejectValue("monthOn", "timer.month.wrong"));
        } else if (kind == TimerKind.HOME_DAY) {
            home.check(errors);
        } else {
            checkDaily(errors);
        }
    }

    private void checkDaily(Errors errors) {
        boolean one = on != null;
        boolean other = off != null;
        if (one && !other && !errors.hasFieldErrors("offAt")) {
            errors.rejectValue("offAt", "rig.timer.both");
        }
        if (other && !one && !errors.hasFieldErrors("onAt")) {
            errors.rejectValue("onAt", "rig.timer.both");
        }
    }

    Optional<LampTimer> timer() {
        if (kind == TimerKind.MONTHLY) {
            return Optional.of(months.timer());
        }
        if (kind == TimerKind.HOME_DAY) {
            return Optional.of(home.timer(Given.of(home.latitude()), Given.of(home.middle())));
        }
        return on == null || off == null ? Optional.empty() : Optional.of(new DailyTimer(on, off));
    }
}
