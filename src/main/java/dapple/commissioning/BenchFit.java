package dapple.commissioning;

import dapple.commissioning.BenchEntry.Row;
import dapple.lamp.CurveShown;
import dapple.lamp.LampOutput;
import dapple.lamp.OutputCurve.Reached;
import java.util.List;
import java.util.Optional;

/**
 * What a bench series says of a lamp.
 *
 * @param output what is kept: the fitted curve at the distance of one of the readings
 * @param isScattered whether the readings scatter more than meter and distances explain, or one does not fit
 * @param curve empty where what shines reaches into it
 * @param height for the amount that was asked for
 */
public record BenchFit(
        LampOutput output,
        List<AtDistance> rows,
        boolean isScattered,
        Optional<CurveShown> curve,
        Optional<Height> height) {
    public BenchFit {
        rows = List.copyOf(rows);
    }

    /** What a reading may be off by: 95 %. */
    public double low() {
        return Math.max(0, output.reading() * (1 - 2 * output.relativeUncertainty()));
    }

    public double high() {
        return output.reading() * (1 + 2 * output.relativeUncertainty());
    }

    /**
     * One reading.
     *
     * @param corrected by the meter's calibration
     * @param fitted what the curve gives there
     */
    public record AtDistance(Row row, double corrected, double fitted, boolean fits) {
        public Optional<Double> ratio() {
            return fitted > 0 ? Optional.of(corrected / fitted) : Optional.empty();
        }

        public double distanceMetres() {
            return row.distanceMetres();
        }

        public double shown() {
            return row.amount();
        }
    }

    /**
     * Where an amount is reached.
     *
     * @param earliest if the lamp is as weak as it may be
     * @param latest if it is as strong as it may be
     */
    public record Height(double amount, Reached metres, Reached earliest, Reached latest) {}
}
