package dapple.api;

import dapple.light.quantity.Quantity;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What the format calls the quantities of light; others a scene cannot name. */
final class Names {
    private static final Map<Quantity, String> OF_LIGHT = new EnumMap<>(Map.of(
            Quantity.UV_INDEX, "uvi",
            Quantity.ILLUMINANCE, "illuminance",
            Quantity.UVA, "uva",
            Quantity.IR_A, "irA",
            Quantity.IR_B, "irB",
            Quantity.IRRADIANCE, "irradiance"));

    private Names() {}

    static String of(Quantity quantity) {
        return Optional.ofNullable(OF_LIGHT.get(quantity))
                .orElseThrow(() -> new IllegalArgumentException("a scene has no " + quantity));
    }

    static Optional<Quantity> quantity(String name) {
        return OF_LIGHT.keySet().stream()
                .filter(quantity -> of(quantity).equals(name))
                .findFirst();
    }

    /** How many quantities a scene may name. */
    static int count() {
        return OF_LIGHT.size();
    }

    static Set<String> all() {
        return new TreeSet<>(OF_LIGHT.values());
    }

    static String known() {
        return String.join(", ", OF_LIGHT.values());
    }
}
