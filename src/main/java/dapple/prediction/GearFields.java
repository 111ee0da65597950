package dapple.prediction;

import dapple.rig.Ballast;
import dapple.rig.Gear;
import dapple.rig.LampControl;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What feeds a lamp, as forms ask for it; empty is not known. */
record GearFields(
        @Nullable Ballast ballast,
        @Nullable LampControl control,
        @Nullable BigDecimal voltagePercent) {
    private static final BigDecimal PERCENT = BigDecimal.valueOf(100);

    static GearFields of(Gear gear) {
        return new GearFields(
                gear.ballast().orElse(null),
                gear.control().orElse(null),
                gear.voltageRatio().map(GearFields::percent).orElse(null));
    }

    private static BigDecimal percent(double ratio) {
        return BigDecimal.valueOf(Math.round(ratio * 10_000), 2).stripTrailingZeros();
    }

    void check(Errors errors) {
        if (voltagePercent != null && control != LampControl.DIMMED && !errors.hasFieldErrors("voltagePercent")) {
            errors.rejectValue("voltagePercent", "gear.voltage.undimmed");
        }
    }

    Gear gear() {
        return new Gear(
                Optional.ofNullable(ballast),
                Optional.ofNullable(control),
                Optional.ofNullable(voltagePercent).map(percent -> percent.doubleValue() / PERCENT.doubleValue()));
    }
}
