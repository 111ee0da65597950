package dapple.target;

import dapple.light.quantity.Check;
import java.util.Locale;

/**
 * A UV zone, 1 to 4 [ferguson2010; baines2016], offered by a method. Not every zone has limits for both methods.
 *
 * @param number 1 (crepuscular or shade dweller) to 4 (mid-day sun basker)
 */
public record UvZone(int number, LightMethod method) {
    public UvZone {
        Check.within("UV zone", number, 1, 4, "");
    }

    static UvZone of(String method, String number) {
        return new UvZone(Integer.parseInt(number), LightMethod.valueOf(method.toUpperCase(Locale.ROOT)));
    }
}
