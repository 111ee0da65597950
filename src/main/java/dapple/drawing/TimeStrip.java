package dapple.drawing;

import dapple.light.judging.State;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Readings of one point over time against the target of their day. Value up from 0, time to the right; numbers are in
 * units of the drawing. However many readings there are, at most two are drawn for each step of time.
 *
 * @param from first day
 * @param to last day
 * @param line joins readings at most 14 days apart with no event between
 * @param readings how many there are in these days
 * @param eventsLeftOut older ones than there is room for
 */
public record TimeStrip(
        LocalDate from,
        LocalDate to,
        StripFrame frame,
        List<Target> targets,
        List<Gap> gaps,
        String line,
        List<Disc> discs,
        Optional<Newest> newest,
        List<Event> events,
        int readings,
        int eventsLeftOut) {

    public static TimeStrip of(StripHistory history, StripSize size, LocalDate lastDay) {
        return new TimeStripDrawing(history, size, lastDay).drawn();
    }

    /** Whether some readings are left out between the lowest and the highest of a step of time. */
    public boolean isThinned() {
        return discs.size() < readings;
    }

    /**
     * The limits of one version, from where it begins until where the next does.
     *
     * @param bars at the limits that there are
     * @param ceiling double line
     * @param ceilingLabel empty where it has no room
     */
    public record Target(
            double x,
            double y,
            double width,
            double height,
            String bars,
            String ceiling,
            double ceilingY,
            String ceilingLabel,
            String name,
            String label,
            double labelY) {
        public double right() {
            return Rounded.of(x + width);
        }
    }

    /** More than 14 days without a reading. */
    public record Gap(double x, double width, boolean hasRoomForWords) {
        public double middle() {
            return Rounded.of(x + width / 2);
        }
    }

    /** A reading with its interval. */
    public record Disc(double x, double y, String whisker, State state, String words) {}

    /** The amount of the newest reading, beside its disc, or above where that is at the edge. */
    public record Newest(double x, double y, String anchor, String amount, State state) {}

    /**
     * An event.
     *
     * @param label cut to its room, empty where it has none
     */
    public record Event(double x, double labelX, double labelY, String anchor, String label, String words) {}
}
