package dapple.light.metrology;

import dapple.light.metrology.MeterFinding.Drifting;
import dapple.light.metrology.MeterFinding.Knocked;
import dapple.light.metrology.MeterFinding.Steady;
import dapple.light.metrology.MeterFinding.Unknown;
import dapple.light.metrology.MeterFinding.Why;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Meters of one quantity held against one another and against the lamps that they read, by all readings of a site: whose
 * gain drifts and whose was knocked. Formulas and figures: docs/physics.md, Meters.
 *
 * @param findings one for each meter, by its key
 * @param sharedShifts of all meters at once
 * @param withdrawn what was found once and did not last
 * @param weeks each meter's weeks, in order
 * @param scatterFactor by what factor the readings scatter more than their stated uncertainties
 */
public record MeterDrift(
        List<MeterFinding> findings,
        List<SharedShift> sharedShifts,
        List<Withdrawn> withdrawn,
        List<WeekOfMeter> weeks,
        double scatterFactor) {
    /** Half width of a drift's interval from which on it says nothing, ln per year (ours). */
    private static final double TELLS_NOTHING = 0.15;

    /** Weeks without which nothing is told. */
    private static final int LEAST_WEEKS = 6;

    public MeterDrift {
        findings = List.copyOf(findings);
        sharedShifts = List.copyOf(sharedShifts);
        withdrawn = List.copyOf(withdrawn);
        weeks = List.copyOf(weeks);
    }

    /** Of readings in any order. */
    public static MeterDrift of(List<Compared> readings, DriftSettings settings) {
        return readings.isEmpty()
                ? new MeterDrift(List.of(), List.of(), List.of(), List.of(), 1)
                : of(new Watch(readings, settings));
    }

    private static MeterDrift of(Watch watch) {
        return new MeterDrift(
                IntStream.range(0, watch.meters().size())
                        .mapToObj(meter -> finding(watch, meter))
                        .toList(),
                ofAll(watch),
                withdrawn(watch),
                watch.shifts(),
                watch.scatterFactor());
    }

    private static List<SharedShift> ofAll(Watch watch) {
        return suspicions(watch, Shape.ALL)
                .map(suspicion -> new SharedShift(
                        watch.end(suspicion.week()),
                        watch.start(suspicion.best().shape().week()),
                        Change.ofTold(suspicion.best())))
                .toList();
    }

    private static List<Withdrawn> withdrawn(Watch watch) {
        return watch.search().withdrawn().stream()
                .map(past -> new Withdrawn(
                        suspects(watch, past.suspicion().meter()),
                        watch.end(past.suspicion().week()),
                        watch.end(past.week())))
                .toList();
    }

    private static List<String> suspects(Watch watch, int meter) {
        return meter == Shape.ALL ? watch.meters() : List.of(watch.meters().get(meter));
    }

    private static MeterFinding finding(Watch watch, int meter) {
        return suspicions(watch, meter)
                .findFirst()
                .map(suspicion -> told(watch, suspicion.best(), suspicion))
                .or(() -> insteadOfAnother(watch, meter))
                .orElseGet(() -> untold(watch, meter));
    }

    private static Stream<Suspicion> suspicions(Watch watch, int meter) {
        return watch.search().found().stream().filter(suspicion -> suspicion.meter() == meter);
    }

    /** A meter that may have changed in place of one that was found. */
    private static Optional<MeterFinding> insteadOfAnother(Watch watch, int meter) {
        return watch.search().found().stream()
                .flatMap(suspicion -> watch.search().insteadOf(suspicion, watch.lastWeek()).stream()
                        .filter(other -> other.shape().meter() == meter)
                        .map(other -> told(watch, other, suspicion)))
                .findFirst();
    }

    private static MeterFinding told(Watch watch, Estimate change, Suspicion suspicion) {
        String meter = watch.meters().get(change.shape().meter());
        Doubt doubt = doubt(watch, change.shape().meter(), suspicion);
        return change.shape().kind() == Shape.Kind.DRIFT
                ? new Drifting(meter, watch.end(suspicion.week()), Change.ofTold(change), doubt)
                : new Knocked(
                        meter,
                        watch.end(suspicion.week()),
                        watch.start(change.shape().week()),
                        Change.ofTold(change),
                        doubt);
    }

    private static Doubt doubt(Watch watch, int meter, Suspicion suspicion) {
        List<Integer> suspects = Stream.concat(
                        Stream.of(suspicion.meter()),
                        watch.search().insteadOf(suspicion, watch.lastWeek()).stream()
                                .map(other -> other.shape().meter()))
                .filter(other -> other != meter)
                .toList();
        return new Doubt(
                suspects.stream()
                        .filter(other -> other != Shape.ALL)
                        .map(watch.meters()::get)
                        .toList(),
                watch.meters().size() == 1 || suspects.contains(Shape.ALL));
    }

    private static MeterFinding untold(Watch watch, int meter) {
        String name = watch.meters().get(meter);
        if (watch.lastWeek() < LEAST_WEEKS || mostEnclosures(watch, name) < WeekOfMeter.LEAST_ENCLOSURES) {
            return new Unknown(name, Why.TOO_FEW_READINGS);
        }
        Estimate drift = watch.search().drift(meter);
        return 2 * drift.standardError() > TELLS_NOTHING
                ? new Unknown(name, Why.NEEDS_REFERENCE)
                : new Steady(name, Change.of(drift).interval());
    }

    private static int mostEnclosures(Watch watch, String meter) {
        return watch.shifts().stream()
                .filter(week -> week.meter().equals(meter))
                .mapToInt(WeekOfMeter::enclosures)
                .max()
                .orElse(0);
    }
}
