package dapple.check;

import dapple.lamp.LampClass;
import dapple.site.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Optional;

/**
 * How far lamps of a class must be from things, by {@code shared/fire-distances.csv}; the maker's larger distance goes first.
 *
 * @param coverMetres empty: they may lie on a cover
 */
record FireDistance(LampClass lampClass, double furnitureMetres, Optional<Double> coverMetres) {
    private static final List<FireDistance> ALL = ReferenceTable.rows("shared/fire-distances.csv", FireDistance::row);

    private static FireDistance row(NamedCsvRecord row) {
        return new FireDistance(
                LampClass.valueOf(row.getField("lamp_class")),
                metres(row.getField("furniture_cm")),
                Optional.of(row.getField("cover_cm"))
                        .filter(text -> !text.isEmpty())
                        .map(FireDistance::metres));
    }

    private static double metres(String centimetres) {
        return Double.parseDouble(centimetres) / 100;
    }

    static FireDistance of(LampClass lampClass) {
        return ALL.stream()
                .filter(row -> row.lampClass() == lampClass)
                .findFirst()
                .orElseThrow();
    }
}
