package dapple.importing.sheet;

import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;

/** What a column means. */
public sealed interface Meaning {
    /** For forms and for what a site has chosen before; {@link #of} reads it. */
    String code();

    /** Whether days stand in the column. */
    default boolean isDay() {
        return this instanceof Of of && of.field().kind() == Field.Kind.DAY;
    }

    /** The column is not read. */
    record LeftOut() implements Meaning {
        @Override
        public String code() {
            return "-";
        }
    }

    record Of(Field field) implements Meaning {
        @Override
        public String code() {
            return field.name();
        }
    }

    /**
     * Readings of one quantity at one place: by what the point stands for, or by its code; in the enclosure of the row, or in
     * one that the column names.
     */
    record Amount(Quantity quantity, Optional<PointRole> role, Optional<String> point, Optional<String> enclosure)
            implements Meaning {
        public Amount(Quantity quantity, Optional<PointRole> role) {
            this(quantity, role, Optional.empty(), Optional.empty());
        }

        @Override
        public String code() {
            return String.join(
                    "|", quantity.name(), role.map(PointRole::name).orElse(""), point.orElse(""), enclosure.orElse(""));
        }
    }

    /** The meaning that a code stands for; empty if it stands for none. */
    static Optional<Meaning> of(String code) {
        if (code.equals("-")) {
            return Optional.of(new LeftOut());
        }
        String[] parts = code.split("\\|", -1);
        return parts.length == 4
                ? named(Quantity.values(), parts[0])
                        .map(quantity -> new Amount(
                                quantity,
                                named(PointRole.values(), parts[1]),
                                Optional.of(parts[2]).filter(Predicate.not(String::isEmpty)),
                                Optional.of(parts[3]).filter(Predicate.not(String::isEmpty))))
                : named(Field.values(), code).map(Of::new);
    }

    private static <E extends Enum<E>> Optional<E> named(E[] all, String name) {
        return Arrays.stream(all).filter(one -> one.name().equals(name)).findFirst();
    }
}
