package dapple.lamp;

import dapple.drawing.CurvePlot;
import dapple.drawing.PlotSize;
import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a lamp gives over distance, as two drawings of the same. */
public record CurveShown(
        LampOutput output, CurvePlot wide, CurvePlot narrow, double nearestAmount, double farthestAmount) {
    /** The largest UV index that any zone allows anywhere, see {@code shared/uv-zone-limits.csv}. */
    static final double STRONGEST_CEILING = 8;

    private static final double CENTIMETRES = 100;

    static CurveShown of(OutputCurve curve) {
        LampOutput output = curve.output();
        return of(curve, List.of(new CurvePlot.Point(CENTIMETRES * output.distanceMetres(), output.reading())));
    }

    /** With the readings that it was fitted to. */
    public static CurveShown of(OutputCurve curve, List<CurvePlot.Point> stated) {
        LampOutput output = curve.output();
        CurvePlot.Curve drawn = new CurvePlot.Curve(
                IntStream.range(0, curve.amounts().size())
                        .mapToObj(index -> new CurvePlot.Point(
                                CENTIMETRES * curve.distancesMetres().get(index),
                                curve.amounts().get(index)))
                        .toList(),
                curve.relativeSpread(),
                stated,
                output.quantity() == Quantity.UV_INDEX ? Optional.of(STRONGEST_CEILING) : Optional.empty());
        return new CurveShown(
                output,
                CurvePlot.of(drawn, PlotSize.WIDE),
                CurvePlot.of(drawn, PlotSize.NARROW),
                curve.amounts().get(0),
                curve.amounts().get(curve.amounts().size() - 1));
    }
}
