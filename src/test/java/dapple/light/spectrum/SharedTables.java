package dapple.light.spectrum;

import dapple.light.spectrum.Spectrum.Sample;
import dapple.light.spectrum.SpectrumTables.StandardSun;
import dapple.light.spectrum.Weight.Point;
import dapple.site.ReferenceTable;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;

/** The tables in {@code shared}, as the program reads them. */
final class SharedTables {
    private SharedTables() {}

    static SpectrumTables all() {
        return new SpectrumTables(
                Weight.logLinear(points("shared/action-uv-hazard.csv", "s_uv")),
                Weight.linear(points("shared/action-previtamin-d3.csv", "s_vd")),
                Weight.linear(points("shared/v-lambda.csv", "v")),
                new StandardSun("ASTM G173-03, 37° tilt", sun("global_tilt_W_m2_nm")));
    }

    static Spectrum sun(String column) {
        return new Spectrum(
                ReferenceTable.rows(
                        "shared/solar-g173.csv", row -> new Sample(number(row, "wavelength_nm"), number(row, column))),
                List.of());
    }

    private static List<Point> points(String path, String column) {
        return ReferenceTable.rows(path, row -> new Point(number(row, "wavelength_nm"), number(row, column)));
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }
}
