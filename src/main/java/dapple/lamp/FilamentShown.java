package dapple.lamp;

import java.util.List;

/**
 * The fractions of a lamp with a filament as its page shows them.
 *
 * @param kelvin colour temperature that is assumed of the class
 * @param rows at the rated voltage first; more where it is known what dimming does
 * @param sun shares of the standard sun: UVA, visible, IR-A, IR-B
 */
record FilamentShown(double kelvin, List<FilamentRow> rows, List<Double> sun) {
    FilamentShown {
        rows = List.copyOf(rows);
        sun = List.copyOf(sun);
    }

    public boolean isDimmable() {
        return rows.size() > 1;
    }
}
