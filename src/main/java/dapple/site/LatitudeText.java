package dapple.site;

import java.util.Locale;

/** A latitude as pages write it, as in 28.0° S. */
public final class LatitudeText {
    private LatitudeText() {}

    public static String of(double degrees) {
        return String.format(Locale.ROOT, "%.1f°\u00a0%s", Math.abs(degrees), degrees < 0 ? "S" : "N");
    }
}
