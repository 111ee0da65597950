package dapple.light.metrology;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Keeps single lamps and single slips from speaking for a meter. A reading counts by Huber's weight [huber1964], beyond
 * 3.5 standard deviations hardly at all; a set of lamps of which all points differ so far is taken as changed without
 * notice, a point that does so twice in a row as lit otherwise.
 */
final class Oddities {
    /** 95 % as efficient as least squares where all is normal. */
    private static final double HUBER = 1.345;

    /** From here on an outlier (common practice, no source). */
    private static final double OUTLIER = 3.5;

    /** Weight of an outlier. */
    private static final double HARDLY = 1e-3;

    /** A set of so many points tells a change of its lamps from a slip at one of them. */
    private static final int SEVERAL = 2;

    private final Map<String, Double> before = new HashMap<>();

    /** Before a week's readings are taken in. */
    void heed(WeekOfReadings sheet, Function<Compared, LampFilter> filters) {
        WeekOfReadings.bySet(sheet.expected()).values().forEach(set -> heed(set, sheet, filters));
    }

    private void heed(List<Sighting> set, WeekOfReadings sheet, Function<Compared, LampFilter> filters) {
        LampFilter filter = filters.apply(set.get(0).reading());
        boolean isSet = set.size() >= SEVERAL && Math.abs(sheet.standard(set)) > OUTLIER && agree(set, sheet);
        if (isSet) {
            filter.restart();
        }
        set.forEach(sighting -> heed(sighting, isSet ? 0 : sheet.standard(sighting), filter));
    }

    private static boolean agree(List<Sighting> set, WeekOfReadings sheet) {
        double sign = Math.signum(sheet.standard(set));
        long far = set.stream()
                .filter(sighting -> sign * sheet.standard(sighting) > HUBER)
                .count();
        return 2 * far > set.size();
    }

    private void heed(Sighting sighting, double standard, LampFilter filter) {
        String point = sighting.reading().point();
        if (Math.abs(standard) > OUTLIER && standard * before.getOrDefault(point, 0.0) > OUTLIER * OUTLIER) {
            filter.restart(point);
        }
        before.put(point, standard);
    }

    /** How much a reading counts, above 0, at most 1. */
    double weight(WeekOfReadings sheet, Sighting sighting) {
        if (!sheet.isExpected(sighting)) {
            return 1;
        }
        double standard = Math.abs(sheet.standard(sighting));
        return standard <= HUBER ? 1 : standard <= OUTLIER ? HUBER / standard : HARDLY;
    }
}
