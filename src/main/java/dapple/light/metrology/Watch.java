package dapple.light.metrology;

import dapple.light.metrology.GainInformation.Scored;
import dapple.light.metrology.LampFilter.Gauge;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Goes through all readings week by week, as they came, and asks after each week whether a meter has changed. */
final class Watch {
    private static final long WEEK_SECONDS = Duration.ofDays(7).toSeconds();
    private static final double YEAR_SECONDS = 365.25 * 86400;

    /** One after the other, whatever order they come in. */
    private static final Comparator<Compared> IN_ORDER = Comparator.comparing(Compared::at)
            .thenComparing(Compared::point)
            .thenComparing(Compared::meter)
            .thenComparing(Compared::lnAmount);

    private final List<String> meters;
    private final Instant first;
    private final TreeMap<Integer, List<Compared>> weeks = new TreeMap<>();
    private final Map<String, LampFilter> filters = new HashMap<>();
    private final Gauge gauge;
    private final DriftSettings settings;
    private final GainInformation information;
    private final Search search;
    private final Scatter scatter = new Scatter();
    private final Oddities oddities = new Oddities();
    private final List<WeekOfMeter> shifts = new ArrayList<>();

    /** @param readings at least 1 */
    Watch(List<Compared> readings, DriftSettings settings) {
        this.settings = settings;
        meters = readings.stream().map(Compared::meter).distinct().sorted().toList();
        first = readings.stream()
                .map(Compared::at)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        readings.stream()
                .sorted(IN_ORDER)
                .forEach(reading -> weeks.computeIfAbsent(week(reading.at()), week -> new ArrayList<>())
                        .add(reading));
        gauge = new Gauge(meters.size(), settings.lnMismatch());
        information = new GainInformation(meters.size(), weeks.lastKey() + 1);
        search = new Search(information, settings);
        weeks.forEach(this::walk);
    }

    private int week(Instant at) {
        return Math.toIntExact(Duration.between(first, at).toSeconds() / WEEK_SECONDS);
    }

    private double years(Instant at) {
        return Duration.between(first, at).toMillis() / 1000.0 / YEAR_SECONDS;
    }

    private void walk(int week, List<Compared> readings) {
        WeekOfReadings sheet = new WeekOfReadings(
                readings.stream().map(reading -> sighting(reading, week)).toList(), scatter.factor());
        readings.forEach(reading -> filter(reading).advance(years(reading.at())));
        double[] gains = search.gains();
        sheet.expect(this::filter, gains);
        shifts.addAll(sheet.shifts(search.constantGains()).stream()
                .map(shift -> shift.named(meters, start(week)))
                .toList());
        oddities.heed(sheet, this::filter);
        scatter.learn(sheet.standardised());
        takeIn(sheet);
        search.look(week);
    }

    /**
     * What all readings of a week share is one unknown more for the gains. For the lamps, each of which knows only its own
     * readings, it is noise, so much that the mean over all of them gets its share of it.
     */
    private void takeIn(WeekOfReadings sheet) {
        double day = settings.lnDay() * settings.lnDay();
        Map<Integer, List<Scored>> byColumn = new TreeMap<>();
        for (Sighting sighting : sheet.sightings()) {
            LampFilter filter = filter(sighting.reading());
            Innovation innovation = filter.innovation(sighting);
            double noise = sheet.noise(sighting) / oddities.weight(sheet, sighting);
            byColumn.computeIfAbsent(sighting.column(), column -> new ArrayList<>())
                    .add(new Scored(innovation.row(), innovation.difference(), innovation.variance() + noise));
            filter.take(sighting, innovation, noise * (1 + day * sheet.precision(sighting.meter())));
        }
        byColumn.forEach((column, readings) -> information.add(readings, column, day));
    }

    private LampFilter filter(Compared reading) {
        return filters.computeIfAbsent(
                reading.lamps().key(), key -> new LampFilter(reading.lamps(), gauge, years(reading.at())));
    }

    private Sighting sighting(Compared reading, int week) {
        int meter = meters.indexOf(reading.meter());
        return new Sighting(reading, meter, information.column(meter, week));
    }

    Instant start(int week) {
        return first.plusSeconds(week * WEEK_SECONDS);
    }

    /** When the last reading of a week was taken. */
    Instant end(int week) {
        List<Compared> readings = Objects.requireNonNull(weeks.get(week));
        return readings.get(readings.size() - 1).at();
    }

    int lastWeek() {
        return weeks.lastKey();
    }

    List<String> meters() {
        return meters;
    }

    Search search() {
        return search;
    }

    List<WeekOfMeter> shifts() {
        return shifts;
    }

    double scatterFactor() {
        return scatter.factor();
    }
}
