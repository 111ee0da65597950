package dapple.importing;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.Locale;

/** By what things of sheets are told apart: the same name is the same thing. */
final class Keys {
    private static final String BETWEEN = "\n";

    private Keys() {}

    static String of(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
    }

    static String within(String enclosure, String name) {
        return enclosure + BETWEEN + of(name);
    }

    static String role(String enclosure, PointRole role) {
        return enclosure + BETWEEN + BETWEEN + role;
    }

    static String animal(String name, String species, String enclosure) {
        return String.join(BETWEEN, of(name), species, enclosure);
    }

    static String noMeter(Quantity quantity) {
        return BETWEEN + quantity;
    }
}
