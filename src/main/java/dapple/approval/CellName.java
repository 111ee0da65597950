package dapple.approval;

import dapple.light.quantity.Quantity;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** How the cells of a target are named in a form: quantity, place and what of the cell, as in UV_INDEX-BASKING-low. */
record CellName(Quantity quantity, LimitPlace place) {
    /** The quantities that a target may limit, in the order of the form; those that the core does not have are left out. */
    private static final List<String> LIMITED =
            List.of("UV_INDEX", "ILLUMINANCE", "IRRADIANCE", "UVA", "SURFACE_TEMPERATURE");

    static List<Quantity> quantities() {
        return Arrays.stream(Quantity.values())
                .filter(quantity -> LIMITED.contains(quantity.name()))
                .sorted(Comparator.comparingInt(quantity -> LIMITED.indexOf(quantity.name())))
                .toList();
    }

    static CellName of(SourcedLimit limit) {
        return new CellName(limit.quantity(), limit.place());
    }

    String low() {
        return name("low");
    }

    String high() {
        return name("high");
    }

    String mark() {
        return name("mark");
    }

    String source() {
        return name("source");
    }

    private String name(String part) {
        return quantity + "-" + place + "-" + part;
    }

    /** Fills the fields of a cell. */
    static void type(SourcedLimit limit, Map<String, String> cells) {
        CellName name = of(limit);
        if (limit.place() == LimitPlace.BASKING) {
            cells.put(name.low(), plain(limit.band().low()));
        }
        cells.put(name.high(), plain(limit.band().high()));
        cells.put(name.mark(), limit.mark().name());
        cells.put(name.source(), limit.source());
    }

    /** A number as one would type it: 3, 0.29. */
    static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
