package dapple.drawing;

import java.time.LocalDate;
import java.util.List;

/**
 * The dose that was available, week by week, in UVI·h a day: a bar from lowest to highest with a notch at the best
 * estimate. Numbers are in units of the drawing. What is unknown is no bar at all.
 *
 * @param to last day
 * @param unknown times without a known dose, as one box each
 * @param off times planned off, at 0
 */
public record DoseStrip(
        LocalDate from,
        LocalDate to,
        StripFrame frame,
        List<Bar> bars,
        List<Box> unknown,
        List<Box> off,
        List<LaneRow> lanes) {

    /**
     * The weeks from a first day until the week of a last one.
     *
     * @param from first day of a week of the history
     */
    public static DoseStrip of(DoseHistory history, StripSize size, LocalDate from, int weeks) {
        return new DoseStripDrawing(history, size, from, weeks).drawn();
    }

    /** A week of which at least a day is known. */
    public record Bar(
            double x,
            double y,
            double width,
            double height,
            String notch,
            boolean isCarried,
            boolean isPartly,
            String words) {
        public double middle() {
            return Rounded.of(x + width / 2);
        }
    }

    /** Weeks that are drawn as one. */
    public record Box(double x, double width, int weeks, boolean hasRoomForWords) {
        public double middle() {
            return Rounded.of(x + width / 2);
        }
    }

    /** A lane with its name above. */
    public record LaneRow(String name, double nameY, List<Entry> entries) {}

    /**
     * An entry of a lane.
     *
     * @param label cut to its room, empty where it has none
     */
    public record Entry(double x, double y, double width, double labelX, String anchor, String label, String words) {}
}
