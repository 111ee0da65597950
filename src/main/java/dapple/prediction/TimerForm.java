package dapple.prediction;

import dapple.rig.FittingFacts;
import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** When a lamp burns, and on which circuit. */
record TimerForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @Nullable TimerKind timerKind,
        @Nullable LocalTime onAt,
        @Nullable LocalTime offAt,
        @Nullable List<String> monthOn,
        @Nullable List<String> monthOff,
        @Nullable List<String> monthDark,

        @DecimalMin("-90") @DecimalMax("90") @Digits(integer = 12, fraction = 4) @Nullable
        BigDecimal homeLatitude,

        @Nullable Boolean homeShifted,
        @Nullable LocalTime homeMiddle,

        @DecimalMin("-180") @DecimalMax("180") @Digits(integer = 12, fraction = 0) @Nullable
        BigDecimal homePlus,

        @DecimalMin("0") @DecimalMax("24") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal homeShortest,

        @DecimalMin("0") @DecimalMax("24") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal homeLongest,

        @Nullable Long circuitId,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements TimedForm {

    static TimerForm of(FittingFacts fitting, LocalDateTime at) {
        TimerFields timer = TimerFields.of(fitting.hanging().timer());
        @Nullable Long circuit = fitting.hanging().circuitId().orElse(null);
        MonthFields months = timer.months();
        HomeDayFields home = timer.home();
        return new TimerForm(
                null,
                null,
                timer.kind(),
                timer.on(),
                timer.off(),
                months.on(),
                months.off(),
                months.dark(),
                home.latitude(),
                home.isShifted(),
                home.middle(),
                home.plus(),
                home.shortest(),
                home.longest(),
                circuit,
                at,
                null,
                null);
    }

    @Override
    public TimerFields timerFields() {
        return new TimerFields(
                timerKind,
                onAt,
                offAt,
                new MonthFields(given(monthOn), given(monthOff), given(monthDark)),
                new HomeDayFields(
                        homeLatitude,
                        Boolean.TRUE.equals(homeShifted),
                        homeMiddle,
                        homePlus,
                        homeShortest,
                        homeLongest));
    }

    private static List<String> given(@Nullable List<String> texts) {
        return texts == null ? List.of() : texts;
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
