package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.rig.Ballast;
import dapple.rig.Hanging;
import dapple.rig.LampControl;
import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** A lamp that comes. */
record FitForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Long seen,
        @NotNull(message = "{rig.lamp.needed}") @Nullable Long lampId,
        @Line @Size(max = 80) String place,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal xMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal yMetres,

        @DecimalMin("-9.99") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal zMetres,

        @DecimalMin("0") @DecimalMax("180") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal lean,

        @DecimalMin("-360") @DecimalMax("360") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal leanTo,

        @DecimalMin("-360") @DecimalMax("360") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal lengthTo,

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
        @Nullable Ballast ballast,
        @Nullable LampControl control,

        @DecimalMin("40") @DecimalMax("100") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal voltagePercent,

        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,
        @Note @Nullable String note)
        implements TimedForm {

    static FitForm empty(LocalDateTime at) {
        return of(new Hanging("", Optional.empty(), Optional.empty(), Optional.empty()), at);
    }

    static FitForm of(Hanging hanging, LocalDateTime at) {
        MountFields mount = MountFields.of(hanging.mount());
        TimerFields timer = TimerFields.of(hanging.timer());
        MonthFields months = timer.months();
        HomeDayFields home = timer.home();
        GearFields gear = GearFields.of(hanging.gear());
        return new FitForm(
                null,
                null,
                null,
                hanging.place(),
                mount.x(),
                mount.y(),
                mount.z(),
                mount.lean(),
                mount.leanTo(),
                mount.lengthTo(),
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
                hanging.circuitId().orElse(null),
                gear.ballast(),
                gear.control(),
                gear.voltagePercent(),
                at,
                null,
                null);
    }

    private MountFields mountFields() {
        return new MountFields(xMetres, yMetres, zMetres, lean, leanTo, lengthTo);
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

    private GearFields gearFields() {
        return new GearFields(ballast, control, voltagePercent);
    }

    @Override
    public void check(Errors errors) {
        mountFields().check(errors);
        timerFields().check(errors);
        gearFields().check(errors);
    }

    @Override
    public void checkIn(InnerSize size, Errors errors) {
        mountFields().checkIn(size, errors);
    }

    @Override
    public RigStep step(long partId) {
        return new LampStep.Fit(
                Given.of(lampId),
                new Hanging(
                        place.strip(),
                        mountFields().mount(),
                        timerFields().timer(),
                        Optional.ofNullable(circuitId),
                        gearFields().gear()));
    }
}
