package dapple.site;

import dapple.light.spectrum.Spectrum;
import dapple.light.spectrum.Spectrum.Sample;
import dapple.light.spectrum.SpectrumTables;
import dapple.light.spectrum.SpectrumTables.StandardSun;
import dapple.light.spectrum.Weight;
import dapple.light.spectrum.Weight.Point;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;

/** The tables of {@code shared} that spectra are judged by. */
public final class ReferenceSpectra {
    private ReferenceSpectra() {}

    public static SpectrumTables tables() {
        return new SpectrumTables(
                Weight.logLinear(points("shared/action-uv-hazard.csv", "s_uv")),
                Weight.linear(points("shared/action-previtamin-d3.csv", "s_vd")),
                Weight.linear(points("shared/v-lambda.csv", "v")),
                new StandardSun("ASTM G173-03, global, 37° tilt", sun("global_tilt_W_m2_nm")));
    }

    /** The standard sun, by the name of its column in {@code shared/solar-g173.csv}. */
    public static Spectrum sun(String column) {
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
