package dapple.reading;

import dapple.light.quantity.Check;
import java.util.UUID;

/** Another amount in place of a mistyped one, and why. */
public record Correction(UUID key, double amount, String reason) {
    public Correction {
        Check.within("reading", amount, -Double.MAX_VALUE, Double.MAX_VALUE, "");
    }
}
