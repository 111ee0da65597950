package dapple.drawing;

import java.util.List;

/** A plot for the desk and paper, and one for the phone: other drawings of the same, not one scaled. */
public enum PlotSize {
    WIDE(580, 300, 10),
    NARROW(358, 270, 6);

    private static final double LEFT = 54;
    private static final double RIGHT_MARGIN = 14;
    private static final double TOP = 30;
    private static final double BOTTOM_MARGIN = 50;

    private final double width;
    private final double height;
    private final int steps;

    PlotSize(double width, double height, int steps) {
        this.width = width;
        this.height = height;
        this.steps = steps;
    }

    /** At most so many numbers across. */
    int steps() {
        return steps;
    }

    PlotScale across(double low, double high) {
        return PlotScale.linear(low, high, LEFT, width - RIGHT_MARGIN);
    }

    double top() {
        return TOP;
    }

    double bottom() {
        return height - BOTTOM_MARGIN;
    }

    PlotFrame frame(PlotScale across, List<PlotFrame.Mark> up) {
        return new PlotFrame(width, height, LEFT, width - RIGHT_MARGIN, TOP, bottom(), across.marks(steps), up);
    }
}
