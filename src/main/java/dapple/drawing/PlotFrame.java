package dapple.drawing;

import java.util.List;

/**
 * The size and the axes of a plot, in units of the drawing.
 *
 * @param across numbers along the lower edge
 * @param up numbers along the left edge
 */
public record PlotFrame(
        double width,
        double height,
        double left,
        double right,
        double top,
        double bottom,
        List<Mark> across,
        List<Mark> up) {
    /** A number and where it stands. */
    public record Mark(double at, String label) {}

    public double middle() {
        return Rounded.of((left + right) / 2);
    }
}
