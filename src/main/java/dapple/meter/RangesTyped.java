package dapple.meter;

import dapple.site.DecimalText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * Factors by range as they were typed: all of it text, so that nothing is lost whatever is wrong.
 *
 * @param from where the first range begins
 * @param upTo where each ends, row by row
 * @param by factor of each, row by row
 */
record RangesTyped(String from, List<String> upTo, List<String> by) {
    static final int ROWS = 5;

    private static final Allowed AMOUNT =
            new Allowed(BigDecimal.valueOf(-999_999), BigDecimal.valueOf(999_999), 6, "calibration.ranges.amount");
    private static final Allowed FACTOR =
            new Allowed(new BigDecimal("0.1"), new BigDecimal("9.9"), 4, "calibration.ranges.factor");

    RangesTyped(@Nullable String from, @Nullable List<String> upTo, @Nullable List<String> by) {
        this.from = Objects.requireNonNullElse(from, "");
        this.upTo = filled(upTo);
        this.by = filled(by);
    }

    static RangesTyped empty() {
        return new RangesTyped("", List.of(), List.of());
    }

    /** A list that can be written: its rows come one by one. */
    private static List<String> filled(@Nullable List<String> typed) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            rows.add(typed == null || row >= typed.size() ? "" : Objects.requireNonNullElse(typed.get(row), ""));
        }
        return rows;
    }

    boolean isBlank() {
        return from.isBlank()
                && upTo.stream().allMatch(String::isBlank)
                && by.stream().allMatch(String::isBlank);
    }

    /** Says beside each field what is wrong with it. */
    void check(Errors errors) {
        Optional<BigDecimal> end = number("ranges.from", from, AMOUNT, errors);
        List<Integer> given = given();
        for (int row : given) {
            Optional<BigDecimal> last = checkRow(row, end, errors);
            end = last.isPresent() ? last : end;
        }
        if (given.isEmpty()) {
            errors.rejectValue("ranges.upTo[0]", "calibration.ranges.few");
        }
    }

    /** What was typed, after it has been checked. */
    CalibrationFactors factors() {
        List<RangeFactor> ranges = given().stream()
                .map(row -> new RangeFactor(read(upTo.get(row)), read(by.get(row))))
                .toList();
        return new CalibrationFactors(read(from), ranges);
    }

    private List<Integer> given() {
        return IntStream.range(0, ROWS).boxed().filter(this::isGiven).toList();
    }

    private boolean isGiven(int row) {
        return !upTo.get(row).isBlank() || !by.get(row).isBlank();
    }

    private Optional<BigDecimal> checkRow(int row, Optional<BigDecimal> begin, Errors errors) {
        String field = "ranges.upTo[" + row + "]";
        Optional<BigDecimal> last = number(field, upTo.get(row), AMOUNT, errors);
        if (last.isPresent()
                && begin.filter(first -> first.compareTo(last.get()) >= 0).isPresent()) {
            errors.rejectValue(field, "calibration.ranges.rise");
        }
        number("ranges.by[" + row + "]", by.get(row), FACTOR, errors);
        return last;
    }

    private static Optional<BigDecimal> number(String field, String typed, Allowed allowed, Errors errors) {
        Optional<BigDecimal> number = DecimalText.read(typed).filter(allowed::includes);
        if (number.isEmpty()) {
            errors.rejectValue(field, allowed.message());
        }
        return number;
    }

    private static double read(String checked) {
        return DecimalText.read(checked).orElseThrow().doubleValue();
    }

    private record Allowed(BigDecimal least, BigDecimal most, int decimals, String message) {
        boolean includes(BigDecimal number) {
            return number.compareTo(least) >= 0
                    && number.compareTo(most) <= 0
                    && number.stripTrailingZeros().scale() <= decimals;
        }
    }
}
