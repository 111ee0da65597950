package dapple.light.metrology;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Looks week by week for a meter whose gain has stepped or drifts: the likelihood ratio, largest over all changes that
 * may have begun by now, against a threshold. That is a cumulative sum against a change of unknown size and week
 * [page1954; lorden1971; willsky1976].
 */
final class Search {
    /** Steps that are older are found no more; weeks (ours). */
    private static final int WINDOW = 16;

    /** Before so many weeks nothing is told from the first levels. */
    private static final int FIRST_WEEK = 6;

    /** By how much the square of z must be less for another change not to explain the readings as well: 3². */
    private static final double AS_GOOD = 9;

    private final GainInformation information;
    private final DriftSettings settings;
    private final List<Suspicion> found = new ArrayList<>();
    private final List<Withdrawn> withdrawn = new ArrayList<>();

    Search(GainInformation information, DriftSettings settings) {
        this.information = information;
        this.settings = settings;
    }

    List<Suspicion> found() {
        return found;
    }

    /** What was told and did not last. */
    List<Withdrawn> withdrawn() {
        return withdrawn;
    }

    /** A suspicion that later readings did not bear out, and in which week. */
    record Withdrawn(Suspicion suspicion, int week) {}

    /** After all readings of a week. */
    void look(int week) {
        explainAnew(week);
        Optional<Estimate> next = week < FIRST_WEEK ? Optional.empty() : strongest(week);
        while (next.isPresent() && found.size() <= information.meters()) {
            found.add(new Suspicion(next.get(), week));
            next = strongest(week);
        }
    }

    private Optional<Estimate> strongest(int week) {
        Profile profile = beside(found);
        int from = Math.max(1, week - WINDOW);
        return Stream.concat(
                        unsuspected().mapToObj(meter -> best(profile, meter, from, week)), ofAll(profile, from, week))
                .filter(change -> isReal(change, week))
                .max(Comparator.comparingDouble(Estimate::z));
    }

    private boolean isReal(Estimate change, int week) {
        return change.z() > settings.threshold()
                && Math.abs(change.shape().grown(change.size(), week)) >= settings.least();
    }

    private IntStream unsuspected() {
        return IntStream.range(0, information.meters())
                .filter(meter -> found.stream().noneMatch(suspicion -> suspicion.meter() == meter));
    }

    /** What is told of each meter already, by the likeliest shape that it has by now. */
    private void explainAnew(int week) {
        for (Suspicion suspicion : List.copyOf(found)) {
            List<Suspicion> rest = without(suspicion);
            Profile profile = beside(rest);
            int meter = suspicion.meter();
            Estimate best = meter == Shape.ALL
                    ? ofAll(profile, 1, week).findFirst().orElseThrow()
                    : best(profile, meter, 1, week);
            found.set(found.indexOf(suspicion), suspicion.with(best));
        }
        found.stream()
                .filter(suspicion -> !suspicion.isBorneOut())
                .forEach(suspicion -> withdrawn.add(new Withdrawn(suspicion, week)));
        found.removeIf(suspicion -> !suspicion.isBorneOut());
    }

    private List<Suspicion> without(Suspicion one) {
        return found.stream().filter(other -> !other.equals(one)).toList();
    }

    /** The strongest change of one meter: a step in one of the weeks, or a drift. */
    private Estimate best(Profile profile, int meter, int from, int week) {
        Estimate drift = profile.of(Shape.drift(meter));
        Estimate step = Estimate.ofLikeliest(steps(profile, meter, from, week));
        return step.z() > drift.z() ? step : drift;
    }

    private Stream<Estimate> ofAll(Profile profile, int from, int week) {
        return information.meters() == 1
                ? Stream.empty()
                : Stream.of(Estimate.ofLikeliest(steps(profile, Shape.ALL, from, week)));
    }

    private List<Estimate> steps(Profile profile, int meter, int from, int week) {
        double[] image = new double[information.width()];
        List<Estimate> steps = new ArrayList<>();
        for (int at = week; at >= from; at--) {
            for (int column = 0; column < information.meters(); column++) {
                if (meter == Shape.ALL || meter == column) {
                    information.addColumn(image, information.column(column, at), 1);
                }
            }
            Shape step = Shape.step(meter, at);
            steps.add(profile.of(step, step.gains(information), image));
        }
        return steps;
    }

    /** Fits each meter's constant gain, the error of the declines, and what is suspected. */
    private Profile beside(List<Suspicion> suspicions) {
        List<double[]> shapes = new ArrayList<>();
        List<Double> precisions = new ArrayList<>();
        for (int meter = 0; meter < information.meters(); meter++) {
            shapes.add(Shape.constant(meter).gains(information));
            precisions.add(1 / (settings.lnCalibration() * settings.lnCalibration()));
        }
        double[] declines = new double[information.width()];
        declines[GainInformation.columnOfDeclines()] = 1;
        shapes.add(declines);
        precisions.add(1 / (settings.declineShare() * settings.declineShare()));
        for (Suspicion suspicion : suspicions) {
            shapes.add(suspicion.best().shape().gains(information));
            precisions.add(FAINT);
        }
        return new Profile(information, shapes, precisions);
    }

    /** Of a change before any reading: a standard deviation of 10 in ln. */
    private static final double FAINT = 0.01;

    /** ln gains of all meters, with what is suspected. */
    double[] gains() {
        return beside(found).gains(information.meters() + 1 + found.size());
    }

    /** Without what is suspected. */
    double[] constantGains() {
        return beside(found).gains(information.meters() + 1);
    }

    /** How far a meter drifts that is not suspected. */
    Estimate drift(int meter) {
        return beside(found).of(Shape.drift(meter));
    }

    /** Meters by whose change the readings would be explained about as well, or all meters at once. */
    List<Estimate> insteadOf(Suspicion suspicion, int week) {
        Profile profile = beside(without(suspicion));
        double square = suspicion.best().square();
        return Stream.concat(unsuspected().mapToObj(meter -> best(profile, meter, 1, week)), ofAll(profile, 1, week))
                .filter(other -> other.square() > square - AS_GOOD)
                .filter(other -> new Suspicion(other, suspicion.week()).isBorneOut())
                .toList();
    }
}
