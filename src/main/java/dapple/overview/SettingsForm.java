package dapple.overview;

import dapple.site.Given;
import dapple.site.RepeatsAsked;
import dapple.site.Settings;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What a site settles, with the version that the form was made from. */
record SettingsForm(
        @NotNull @Nullable Long version,
        @NotNull @Min(1) @Max(365) @Nullable Integer overdueAfterDays,
        @NotNull @Min(1) @Max(365) @Nullable Integer staleAfterDays,
        @NotNull @Min(1) @Max(365) @Nullable Integer weakAfterDays,
        @NotNull @Min(1) @Max(365) @Nullable Integer weakAfterDaysInZone1,
        @NotNull @Min(0) @Max(240) @Nullable Integer warmUpMinutes,

        @NotNull @DecimalMin("0.01") @DecimalMax("1") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal lowestRatio,

        @NotNull @DecimalMin("1") @DecimalMax("10") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal highestRatio,

        @NotNull @Min(1) @Max(60) @Nullable Integer carryDays,

        @NotNull @DecimalMin("0") @DecimalMax("24") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal baskingHours,

        boolean onePerson,
        boolean keepsDoses,
        @NotNull @Nullable RepeatsAsked repeatsAsked,
        boolean blindRepeats,
        @Min(0) @Max(1200) @Nullable Integer namesKeptMonths) {

    static SettingsForm of(Settings settings, long version) {
        return new SettingsForm(
                version,
                settings.overdueAfterDays(),
                settings.staleAfterDays(),
                settings.weakAfterDays(),
                settings.weakAfterDaysInZone1(),
                settings.warmUpMinutes(),
                number(settings.lowestRatio()),
                number(settings.highestRatio()),
                settings.carryDays(),
                number(settings.baskingHours()),
                settings.onePerson(),
                settings.keepsDoses(),
                settings.repeatsAsked(),
                settings.blindRepeats(),
                settings.namesKeptMonths());
    }

    private static BigDecimal number(double amount) {
        return new BigDecimal(BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString());
    }

    SettingsForm onVersion(long newVersion) {
        return of(settings(), newVersion);
    }

    /** A reading is overdue before it is stale. */
    void check(Errors errors) {
        if (Given.of(staleAfterDays) < Given.of(overdueAfterDays)) {
            errors.rejectValue("staleAfterDays", "settings.stale.early");
        }
    }

    long versionSeen() {
        return Given.of(version);
    }

    Settings settings() {
        return new Settings(
                Given.of(overdueAfterDays),
                Given.of(staleAfterDays),
                Given.of(weakAfterDays),
                Given.of(weakAfterDaysInZone1),
                Given.of(warmUpMinutes),
                Given.number(lowestRatio),
                Given.number(highestRatio),
                Given.of(carryDays),
                Given.number(baskingHours),
                onePerson,
                keepsDoses,
                Given.of(repeatsAsked),
                blindRepeats,
                namesKeptMonths);
    }
}
