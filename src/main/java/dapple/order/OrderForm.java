package dapple.order;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * What a vet orders; each kind has its own numbers, of the UV index.
 *
 * @param despite names the conflicts with cage mates that are accepted
 */
record OrderForm(
        @NotNull @Nullable UUID key,
        @NotNull(message = "{order.kind.needed}") @Nullable OrderKind kind,

        @DecimalMin("0") @DecimalMax("20") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal baskingLow,

        @DecimalMin("0") @DecimalMax("20") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal baskingHigh,

        @DecimalMin("0") @DecimalMax("20") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal shadeHigh,

        @DecimalMin("0.01") @DecimalMax("20") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal ceiling,

        @Line @Size(max = 300) String reason,
        @Nullable LocalDateTime from,
        @Nullable Occurrence fromWhich,

        @NotNull(message = "{order.last-day.needed}") @Nullable
        LocalDate lastDay,

        @Nullable String despite) {

    private static final List<String> NUMBERS = List.of("baskingLow", "baskingHigh", "shadeHigh", "ceiling");

    /** A treatment of longer than this is a slip of the pen; it can be ordered again. */
    private static final int MOST_YEARS = 5;

    static OrderForm empty() {
        return new OrderForm(UUID.randomUUID(), null, null, null, null, null, "", null, null, null, null);
    }

    /** What no field says alone. */
    void check(Errors errors, LocalDate today) {
        if (lastDay != null && lastDay.isBefore(today)) {
            errors.rejectValue("lastDay", "order.last-day.past");
        }
        if (lastDay != null && lastDay.isAfter(today.plusYears(MOST_YEARS))) {
            errors.rejectValue("lastDay", "order.last-day.far");
        }
        if (kind != null) {
            Set<String> asked = asked(kind);
            NUMBERS.forEach(field -> checkIsGiven(field, asked.contains(field), errors));
        }
        if (kind == OrderKind.OWN_LIMITS && !errors.hasErrors()) {
            checkOrder(errors);
        }
    }

    private static Set<String> asked(OrderKind kind) {
        return switch (kind) {
            case OWN_LIMITS -> Set.copyOf(NUMBERS);
            case UV_OFF -> Set.of();
            case CAP -> Set.of("ceiling");
        };
    }

    private static void checkIsGiven(String field, boolean asked, Errors errors) {
        if (errors.hasFieldErrors(field)) {
            return;
        }
        Object typed = errors.getFieldValue(field);
        boolean given = typed != null && !typed.toString().isBlank();
        if (asked && !given) {
            errors.rejectValue(field, "order.number.needed");
        }
        if (!asked && given) {
            errors.rejectValue(field, "order.number.not-needed");
        }
    }

    private void checkOrder(Errors errors) {
        if (Given.number(baskingHigh) < Given.number(baskingLow)) {
            errors.rejectValue("baskingHigh", "order.basking.order");
        }
        if (Given.number(shadeHigh) > Given.number(baskingHigh)) {
            errors.rejectValue("shadeHigh", "order.shade.order");
        }
        if (Given.number(ceiling) < Given.number(baskingHigh)) {
            errors.rejectValue("ceiling", "order.ceiling.order");
        }
    }

    Ordered ordered() {
        return switch (Given.of(kind)) {
            case OWN_LIMITS ->
                new Ordered.OwnLimits(new Limits(
                        new Band(Given.number(baskingLow), Given.number(baskingHigh)),
                        Given.number(shadeHigh),
                        Given.number(ceiling)));
            case UV_OFF -> new Ordered.UvOff();
            case CAP -> new Ordered.Cap(Given.number(ceiling));
        };
    }
}
