package dapple.season;

import dapple.drawing.YearPlot;
import dapple.target.Photoperiod;
import java.util.List;

/** The hours of light a day that a species needs by its target in force. */
record Wanted(String scientificName, Photoperiod photoperiod) {
    /** As far as a day may be off. */
    YearPlot.Band band() {
        return new YearPlot.Band(off(-Photoperiod.MOST_OFF_HOURS), off(Photoperiod.MOST_OFF_HOURS));
    }

    private List<Double> off(double hours) {
        return photoperiod.hours().stream().map(wanted -> wanted + hours).toList();
    }
}
