package dapple.agreement;

import dapple.light.quantity.Interval;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a meter since its newest calibration.
 *
 * @param lnPerYear drift that its readings leave possible, 95 %
 * @param weeks oldest first
 */
record MeterShown(long meterId, Standing standing, Optional<Interval> lnPerYear, List<WeekShown> weeks) {
    MeterShown {
        weeks = List.copyOf(weeks);
    }

    public double lowPercentPerYear() {
        return Percent.of(lnPerYear.map(Interval::low).orElseThrow());
    }

    public double highPercentPerYear() {
        return Percent.of(lnPerYear.map(Interval::high).orElseThrow());
    }

    /** None before the second week. */
    public Optional<WeekChart> chart(ZoneId zone) {
        return WeekChart.of(weeks, zone);
    }

    MeterShown withNewest(int most) {
        List<WeekShown> newest = weeks.subList(Math.max(0, weeks.size() - most), weeks.size());
        return new MeterShown(meterId, standing, lnPerYear, newest);
    }
}
