package dapple.importing.sheet;

import dapple.light.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What numbers of a column measure, and in which units people write it. */
public enum Dimension {
    NUMBER(Map.of("", unit(1))),
    /** In metres. */
    LENGTH(Map.of(
            "m",
            unit(1),
            "cm",
            unit(0.01),
            "mm",
            unit(0.001),
            "in",
            unit(0.0254),
            "inch",
            unit(0.0254),
            "ft",
            unit(0.3048))),
    /** In watts. */
    POWER(Map.of("w", unit(1), "watt", unit(1), "kw", unit(1000))),
    /** In hours. */
    HOURS(Map.of("h", unit(1), "hours", unit(1), "std", unit(1), "hr", unit(1), "hrs", unit(1))),
    UV_INDEX(Map.of("", unit(1), "uvi", unit(1))),
    /** In lux. */
    ILLUMINANCE(Map.of("lx", unit(1), "lux", unit(1), "klx", unit(1000), "klux", unit(1000))),
    /** In watts a square metre. */
    IRRADIANCE(Map.of("w/m2", unit(1), "mw/cm2", unit(10), "uw/cm2", unit(0.01), "mw/m2", unit(0.001))),
    /** In microwatts a square centimetre, as its meters show. */
    UVB(Map.of("uw/cm2", unit(1), "mw/cm2", unit(1000), "w/m2", unit(100))),
    /** In degrees Celsius. */
    TEMPERATURE(Map.of(
            "°c",
            unit(1),
            "c",
            unit(1),
            "°f",
            new Unit(5 / 9.0, 32),
            "f",
            new Unit(5 / 9.0, 32),
            "k",
            new Unit(1, 273.15)));

    /** By what people write; never changed. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Map<String, Unit> units;

    Dimension(Map<String, Unit> units) {
        this.units = units;
    }

    /**
     * One unit: what is written, less a zero, times a factor.
     *
     * @param zero what stands where the unit of the dimension has its 0
     */
    record Unit(double factor, double zero) {
        double from(BigDecimal written) {
            return factor == 1 && zero == 0
                    ? written.doubleValue()
                    : BigDecimal.valueOf((written.doubleValue() - zero) * factor)
                            .round(new MathContext(12))
                            .doubleValue();
        }
    }

    private static Unit unit(double factor) {
        return new Unit(factor, 0);
    }

    static Dimension of(Quantity quantity) {
        return switch (quantity) {
            case UV_INDEX -> UV_INDEX;
            case ILLUMINANCE -> ILLUMINANCE;
            case UVA, IR_A, IR_B, IRRADIANCE -> IRRADIANCE;
            case UVB_IRRADIANCE -> UVB;
            case SURFACE_TEMPERATURE, AIR_TEMPERATURE -> TEMPERATURE;
        };
    }

    /** The unit that a text is; empty: it is none of this dimension. */
    Optional<Unit> unit(String written) {
        return Optional.ofNullable(units.get(normalised(written)));
    }

    static String normalised(String written) {
        return written.toLowerCase(Locale.ROOT)
                .replaceAll("[\\s\\u00a0\\u202f.^]", "")
                .replace('²', '2')
                .replace('µ', 'u')
                .replace('μ', 'u')
                .replace('º', '°')
                .replace("\"", "in");
    }

    /**
     * Reads a number with its unit.
     *
     * @param headUnit the unit that the column's name gives for those without one of their own
     * @throws BadCellException if it is no number, or of an unknown unit
     */
    double read(String cell, NumberStyle style, Optional<Unit> headUnit) {
        NumberText number = NumberText.of(cell).orElseThrow(() -> new BadCellException(Reason.NOT_A_NUMBER, cell));
        BigDecimal written = number.read(style);
        if (number.unit().isEmpty()) {
            return headUnit.map(unit -> unit.from(written)).orElseGet(written::doubleValue);
        }
        boolean isWord = number.unit().matches("(?U)[eExX][0-9a-fA-F+-].*");
        return unit(number.unit())
                .map(unit -> unit.from(written))
                .orElseThrow(() -> new BadCellException(isWord ? Reason.NOT_A_NUMBER : Reason.UNIT_UNKNOWN, cell));
    }
}
