package dapple.species;

import dapple.light.quantity.Check;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A UV zone, 1 to 4 [ferguson2010; baines2016], offered by a method. Not every zone has limits for both methods.
 *
 * @param number 1 (crepuscular or shade dweller) to 4 (mid-day sun basker)
 */
public record UvZone(int number, LightMethod method) {
    private static final List<UvZone> USUAL = Arrays.stream(LightMethod.values())
            .flatMap(method -> Stream.of(1, 2, 3, 4).filter(method::serves).map(number -> new UvZone(number, method)))
            .toList();

    public UvZone {
        Check.within("UV zone", number, 1, 4, "");
    }

    public static UvZone of(String method, String number) {
        return new UvZone(Integer.parseInt(number), LightMethod.valueOf(method.toUpperCase(Locale.ROOT)));
    }

    /** The zones with the methods that are usual in them. */
    public static List<UvZone> usual() {
        return USUAL;
    }

    /** The usual zone with this code; empty if there is none. */
    public static Optional<UvZone> withCode(String code) {
        return USUAL.stream().filter(zone -> zone.code().equals(code)).findFirst();
    }

    /** For forms: method and number, as in SUNBEAM-3. */
    public String code() {
        return method + "-" + number;
    }

    public boolean isUsual() {
        return method.serves(number);
    }
}
