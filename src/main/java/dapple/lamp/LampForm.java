package dapple.lamp;

import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Tag, model, burn hours at entry, day of purchase and place of a lamp, with the version that the form was made from. */
record LampForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 20) String tag,
        @NotNull @Nullable Long modelId,

        @DecimalMin("0") @DecimalMax("999999") @Nullable BigDecimal burnHours,

        @Nullable LocalDate boughtOn,

        @Size(max = 120) @Pattern(regexp = "(?U)\\P{Cntrl}*", message = "{arrange.line}") @Nullable
        String storePlace) {

    static LampForm empty(Optional<Long> modelId) {
        return new LampForm(0L, "", modelId.orElse(null), null, null, "");
    }

    static LampForm of(LampDetails lamp) {
        NewLamp state = lamp.state();
        return new LampForm(
                lamp.version(),
                state.tag(),
                state.modelId(),
                state.burnHoursAtEntry()
                        .map(hours -> BigDecimal.valueOf(hours).stripTrailingZeros())
                        .orElse(null),
                state.boughtOn().orElse(null),
                state.storePlace());
    }

    LampForm onVersion(long newVersion) {
        return new LampForm(newVersion, tag, modelId, burnHours, boughtOn, storePlace);
    }

    long versionSeen() {
        return Given.of(version);
    }

    Optional<LocalDate> day() {
        return Optional.ofNullable(boughtOn);
    }

    NewLamp lamp() {
        return new NewLamp(
                tag.strip(),
                Given.of(modelId),
                Optional.ofNullable(burnHours).map(BigDecimal::doubleValue),
                day(),
                storePlace == null ? "" : storePlace.strip());
    }
}
