package dapple.lamp;

import dapple.site.Given;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Shares as forms ask for them: in percent, to the last digit typed. */
final class Percent {
    private Percent() {}

    static BigDecimal of(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros();
    }

    static double share(@Nullable BigDecimal percent) {
        return Given.of(percent).movePointLeft(2).doubleValue();
    }
}
