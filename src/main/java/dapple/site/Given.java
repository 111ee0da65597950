package dapple.site;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Takes from a form what its rules have shown to be there. */
public final class Given {
    private Given() {}

    public static <T> T of(@Nullable T field) {
        if (field == null) {
            throw new IllegalStateException("a form is read before its rules have been checked");
        }
        return field;
    }

    public static double number(@Nullable BigDecimal field) {
        return of(field).doubleValue();
    }
}
