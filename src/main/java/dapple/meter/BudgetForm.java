package dapple.meter;

import dapple.light.metrology.Cause;
import dapple.site.DecimalText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * The parts of a meter's uncertainty as they were typed, a row for each cause: all of it text, so that nothing is lost
 * whatever is wrong.
 *
 * @param seen id of the budget that the form was made from; 0: none
 */
record BudgetForm(Long seen, List<String> percents, List<String> kinds, List<String> sources) {
    /** What can be stated; the step of the display is the meter's own. */
    static final List<Cause> CAUSES = Arrays.stream(Cause.values())
            .filter(cause -> cause != Cause.RESOLUTION)
            .toList();

    private static final BigDecimal LEAST = new BigDecimal("0.01");
    private static final BigDecimal MOST = new BigDecimal("99.99");
    private static final double MOST_SHARE = 0.99;
    private static final int DECIMALS = 2;
    private static final int MOST_LETTERS = 200;

    BudgetForm(
            @Nullable Long seen,
            @Nullable List<String> percents,
            @Nullable List<String> kinds,
            @Nullable List<String> sources) {
        this.seen = Objects.requireNonNullElse(seen, NewBudget.NONE);
        this.percents = filled(percents);
        this.kinds = filled(kinds);
        this.sources = filled(sources);
    }

    static BudgetForm of(Optional<BudgetFacts> budget) {
        BudgetForm form = new BudgetForm(budget.map(BudgetFacts::id).orElse(NewBudget.NONE), null, null, null);
        for (int row = 0; row < CAUSES.size(); row++) {
            form.kinds.set(row, usual(CAUSES.get(row)).name());
        }
        budget.ifPresent(standing -> standing.parts().forEach(form::fill));
        return form;
    }

    private void fill(UncertaintyPart part) {
        int row = CAUSES.indexOf(part.cause());
        percents.set(
                row, BigDecimal.valueOf(part.percent()).stripTrailingZeros().toPlainString());
        kinds.set(row, part.kind().name());
        sources.set(row, part.source());
    }

    /** How a part is mostly stated. */
    private static UncertaintyKind usual(Cause cause) {
        return switch (cause) {
            case CALIBRATION -> UncertaintyKind.EXPANDED;
            case REPEATS -> UncertaintyKind.STANDARD;
            case SPECTRAL_MISMATCH, ANGLE, POSITION, TEMPERATURE, RESOLUTION -> UncertaintyKind.HALF_WIDTH;
        };
    }

    /** A list that can be written: its rows come one by one. */
    private static List<String> filled(@Nullable List<String> typed) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < CAUSES.size(); row++) {
            rows.add(typed == null || row >= typed.size() ? "" : Objects.requireNonNullElse(typed.get(row), ""));
        }
        return rows;
    }

    BudgetForm on(Optional<BudgetFacts> newer) {
        return new BudgetForm(newer.map(BudgetFacts::id).orElse(NewBudget.NONE), percents, kinds, sources);
    }

    /** Says beside each field what is wrong with it. */
    void check(double resolution, Errors errors) {
        IntStream.range(0, CAUSES.size()).forEach(row -> checkRow(row, errors));
        if (!errors.hasErrors() && isWhole(resolution)) {
            errors.rejectValue("percents[0]", "budget.whole");
        }
    }

    /** Whether the parts together are as large as the reading itself. */
    private boolean isWhole(double resolution) {
        return BudgetFacts.combined(parts(), resolution).forJudging().share() > MOST_SHARE;
    }

    private void checkRow(int row, Errors errors) {
        boolean isTyped = !percents.get(row).isBlank();
        if (isTyped && percent(row).isEmpty()) {
            errors.rejectValue("percents[" + row + "]", "budget.percent.wrong");
        }
        if (isTyped && kind(row).isEmpty()) {
            errors.rejectValue("kinds[" + row + "]", "budget.kind.wrong");
        }
        String source = sources.get(row);
        if (isTyped != !source.isBlank()) {
            errors.rejectValue(isTyped ? "sources[" + row + "]" : "percents[" + row + "]", "budget.half");
        } else if (source.length() > MOST_LETTERS || source.chars().anyMatch(Character::isISOControl)) {
            errors.rejectValue("sources[" + row + "]", "budget.source.wrong");
        }
    }

    private Optional<Double> percent(int row) {
        return DecimalText.read(percents.get(row))
                .filter(number -> number.compareTo(LEAST) >= 0 && number.compareTo(MOST) <= 0)
                .filter(number -> number.stripTrailingZeros().scale() <= DECIMALS)
                .map(BigDecimal::doubleValue);
    }

    private Optional<UncertaintyKind> kind(int row) {
        return Arrays.stream(UncertaintyKind.values())
                .filter(kind -> kind.name().equals(kinds.get(row)))
                .findFirst();
    }

    /** What was typed, after it has been checked. */
    List<UncertaintyPart> parts() {
        return IntStream.range(0, CAUSES.size())
                .filter(row -> !percents.get(row).isBlank())
                .mapToObj(row -> new UncertaintyPart(
                        CAUSES.get(row),
                        percent(row).orElseThrow(),
                        kind(row).orElseThrow(),
                        sources.get(row).strip()))
                .toList();
    }
}
