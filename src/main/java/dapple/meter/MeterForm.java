package dapple.meter;

import dapple.light.quantity.Quantity;
import dapple.site.Given;
import dapple.site.Line;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What is said of a meter, with the version that the form was made from. */
record MeterForm(
        @NotNull @Nullable Long version,
        @Line @Size(max = 20) String code,
        @Line @Size(max = 120) String description,
        @NotNull @Nullable Quantity quantity,

        @NotNull
        @DecimalMin("0.000001")
        @DecimalMax("999999")
        @Digits(integer = 12, fraction = 6, message = "{meter.digits}")
        @Nullable
        BigDecimal resolution,

        @DecimalMin("-999999")
        @DecimalMax("999999")
        @Digits(integer = 12, fraction = 6, message = "{meter.digits}")
        @Nullable
        BigDecimal rangeLow,

        @DecimalMin("-999999")
        @DecimalMax("999999")
        @Digits(integer = 12, fraction = 6, message = "{meter.digits}")
        @Nullable
        BigDecimal rangeHigh,

        @DecimalMin("0.01") @DecimalMax("99.99") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal statedPercent,

        @Pattern(regexp = "(?U)\\P{Cntrl}*", message = "{arrange.line}") @Size(max = 200)
        String statedSource,

        @Pattern(regexp = "(?U)\\P{Cntrl}*", message = "{arrange.line}") @Size(max = 120)
        String lender,

        @Nullable LocalDate borrowedUntil,

        @Pattern(regexp = "(?U)[\\P{Cntrl}\\r\\n\\t]*", message = "{meter.note.wrong}") @Size(max = 500)
        String note) {

    private static final BigDecimal PERCENT = BigDecimal.valueOf(100);

    MeterForm {
        statedSource = statedSource == null ? "" : statedSource;
        lender = lender == null ? "" : lender;
        note = note == null ? "" : note;
    }

    static MeterForm empty() {
        return new MeterForm(0L, "", "", Quantity.UV_INDEX, null, null, null, null, "", "", null, "");
    }

    static MeterForm of(MeterDetails meter) {
        MeterChange state = meter.state();
        Optional<Loan> loan = state.loan();
        return new MeterForm(
                meter.version(),
                state.code(),
                state.description(),
                meter.facts().quantity(),
                number(state.resolution()),
                state.range().map(range -> number(range.low())).orElse(null),
                state.range().map(range -> number(range.high())).orElse(null),
                state.stated().map(stated -> percent(stated.share())).orElse(null),
                state.stated().map(StatedUncertainty::source).orElse(""),
                loan.map(Loan::lender).orElse(""),
                loan.flatMap(Loan::until).orElse(null),
                state.note());
    }

    private static BigDecimal number(double amount) {
        return new BigDecimal(BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString());
    }

    private static BigDecimal percent(double share) {
        return number(BigDecimal.valueOf(share).multiply(PERCENT).doubleValue());
    }

    MeterForm onVersion(long newVersion) {
        return new MeterForm(
                newVersion,
                code,
                description,
                quantity,
                resolution,
                rangeLow,
                rangeHigh,
                statedPercent,
                statedSource,
                lender,
                borrowedUntil,
                note);
    }

    /** What single fields cannot say. */
    void check(Errors errors) {
        if ((rangeLow == null) != (rangeHigh == null)) {
            errors.rejectValue(rangeLow == null ? "rangeLow" : "rangeHigh", "meter.range.half");
        } else if (rangeLow != null && rangeLow.compareTo(Given.of(rangeHigh)) >= 0) {
            errors.rejectValue("rangeHigh", "meter.range.falls");
        }
        if ((statedPercent == null) != statedSource.isBlank()) {
            errors.rejectValue(statedPercent == null ? "statedPercent" : "statedSource", "meter.stated.half");
        }
        if (borrowedUntil != null && lender.isBlank()) {
            errors.rejectValue("lender", "meter.lender.needed");
        }
    }

    long versionSeen() {
        return Given.of(version);
    }

    MeterChange change() {
        return new MeterChange(
                code.strip(),
                description.strip(),
                Given.number(resolution),
                Optional.ofNullable(rangeLow).map(low -> new MeterRange(low.doubleValue(), Given.number(rangeHigh))),
                Optional.ofNullable(statedPercent)
                        .map(percent ->
                                new StatedUncertainty(percent.divide(PERCENT).doubleValue(), statedSource.strip())),
                lender.isBlank()
                        ? Optional.empty()
                        : Optional.of(new Loan(lender.strip(), Optional.ofNullable(borrowedUntil))),
                note.strip());
    }
}
