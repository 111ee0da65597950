package dapple.drawing;

import java.util.List;

/**
 * The size and the axes of a strip: values up from 0, time to the right.
 *
 * @param bottom where 0 lies
 */
public record StripFrame(
        double width,
        double height,
        double left,
        double right,
        double top,
        double bottom,
        List<Tick> values,
        List<Month> months) {

    /** A round value with its height. */
    public record Tick(double y, String label) {}

    /**
     * A month.
     *
     * @param x where it begins
     * @param isBegun whether it began before the drawing, which then has no mark for it
     * @param label empty where it has no room
     */
    public record Month(double x, boolean isBegun, double middle, String label) {}
}
