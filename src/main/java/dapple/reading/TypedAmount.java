package dapple.reading;

import dapple.light.quantity.Quantity;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** Whether a typed number can be what a meter of its quantity shows. */
public final class TypedAmount {
    private static final int DECIMALS = 2;

    private TypedAmount() {}

    /** Says at the field named amount what can be entered; whether there is a number at all the form has said. */
    static void check(@Nullable BigDecimal amount, Quantity quantity, Errors errors) {
        if (amount != null && !isShown(amount, quantity)) {
            errors.rejectValue("amount", "visit.amount.wrong." + quantity.name());
        }
    }

    /** Whether a display of a quantity can show it. */
    public static boolean isShown(BigDecimal amount, Quantity quantity) {
        return amount.scale() <= DECIMALS
                && amount.compareTo(BigDecimal.valueOf(quantity.lowest())) >= 0
                && amount.compareTo(BigDecimal.valueOf(quantity.highest())) <= 0;
    }
}
