package dapple.site;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** A decimal number as people type it: a comma is a decimal point, since many phones offer no other key. */
public final class DecimalText {
    private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,12}([.,][0-9]{0,12})?");

    private DecimalText() {}

    /** The number; empty if the text is no decimal number. */
    public static Optional<BigDecimal> read(String text) {
        String typed = text.strip();
        return DECIMAL.matcher(typed).matches()
                ? Optional.of(new BigDecimal(typed.replace(',', '.')))
                : Optional.empty();
    }
}
