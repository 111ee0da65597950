package dapple.api;

import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the format calls the quantities. */
final class Names {
    private Names() {}

    static String of(Quantity quantity) {
        return switch (quantity) {
            case UV_INDEX -> "uvi";
            case ILLUMINANCE -> "illuminance";
            case UVA -> "uva";
            case IR_A -> "irA";
            case IR_B -> "irB";
            case IRRADIANCE -> "irradiance";
        };
    }

    static Optional<Quantity> quantity(String name) {
        return Arrays.stream(Quantity.values())
                .filter(quantity -> of(quantity).equals(name))
                .findFirst();
    }

    static Set<String> all() {
        return Arrays.stream(Quantity.values()).map(Names::of).collect(Collectors.toSet());
    }

    static String known() {
        return Arrays.stream(Quantity.values()).map(Names::of).collect(Collectors.joining(", "));
    }
}
