package dapple.drawing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Intensity over that along the aim against the angle from it, in units of the drawing.
 *
 * @param line data of a path
 * @param halfAngle where it first falls to half, degrees; the last angle if it never does
 */
public record BeamPlot(PlotFrame frame, String line, int halfAngle) {
    private static final int NUMBERS_UP = 6;
    private static final double HALF = 0.5;

    /**
     * A beam.
     *
     * @param relative one number for each degree from 0
     */
    public static BeamPlot of(List<Double> relative, PlotSize size) {
        PlotScale across = size.across(0, relative.size() - 1.0);
        double most = relative.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        PlotScale up = PlotScale.fromNothing(most, size.bottom(), size.top());
        List<Spot> spots = IntStream.range(0, relative.size())
                .mapToObj(degree -> new Spot(across.at(degree), up.at(relative.get(degree))))
                .toList();
        int half = IntStream.range(0, relative.size())
                .filter(degree -> relative.get(degree) <= HALF)
                .findFirst()
                .orElse(relative.size() - 1);
        return new BeamPlot(size.frame(across, up.marks(NUMBERS_UP)), PathText.open(List.of(spots)), half);
    }
}
