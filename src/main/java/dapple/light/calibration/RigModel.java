package dapple.light.calibration;

import dapple.light.uncertainty.StandardUncertainty;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/** What readings in an enclosure should be, by the factors of its covers, lamps and meters, in this order; some may be held at 1. */
final class RigModel {
    /** A meter without a shared uncertainty counts as known to a part in a million. */
    private static final double LEAST_SHARED = 1e-6;

    private final RigTask task;
    private final List<RigReading.ByMeter> meters;
    private final int parameters;
    private final List<Integer> free;

    RigModel(RigTask task, List<Integer> held) {
        this.task = task;
        this.meters = task.meters();
        this.parameters = task.covers().size() + task.lamps().size() + meters.size();
        this.free = IntStream.range(0, parameters)
                .boxed()
                .filter(index -> !held.contains(index))
                .toList();
    }

    List<RigReading.ByMeter> meters() {
        return meters;
    }

    List<Integer> free() {
        return free;
    }

    Curve curve() {
        List<Coordinate> coordinates = free.stream()
                .<Coordinate>map(index -> new Coordinate.Logarithm(0))
                .toList();
        return new Curve(coordinates, this::model, shown(), uncertainties());
    }

    /** Covers come first, so that of a cover and its lamps the cover is named as open. */
    private int lamp(int index) {
        return task.covers().size() + index;
    }

    private int meter(RigReading reading) {
        return task.covers().size() + task.lamps().size() + meters.indexOf(reading.meter());
    }

    RealVector all(RealVector values) {
        RealVector all = new ArrayRealVector(parameters, 1);
        for (int place = 0; place < free.size(); place++) {
            all.setEntry(free.get(place), values.getEntry(place));
        }
        return all;
    }

    /** The readings; then ln of each factor that is free, of which 0 is what is stated. */
    private RealVector model(RealVector values) {
        return amounts(all(values)).append(values.map(Math::log));
    }

    RealVector amounts(RealVector factors) {
        return new ArrayRealVector(task.readings().stream()
                .mapToDouble(reading -> amount(reading, factors))
                .toArray());
    }

    double amount(RigReading reading, RealVector factors) {
        return factors.getEntry(meter(reading)) * light(reading.seen(), factors);
    }

    double light(SeenLight seen, RealVector factors) {
        double sum = 0;
        for (int lamp = 0; lamp < task.lamps().size(); lamp++) {
            double light = seen.byLamp().get(lamp) * factors.getEntry(lamp(lamp));
            for (int cover = 0; cover < task.covers().size(); cover++) {
                double share = seen.through().get(lamp).get(cover);
                light *= 1 - share + share * factors.getEntry(cover);
            }
            sum += light;
        }
        return sum;
    }

    private RealVector shown() {
        RealVector read = new ArrayRealVector(
                task.readings().stream().mapToDouble(RigReading::value).toArray());
        return read.append(new ArrayRealVector(free.size(), 0));
    }

    private List<StandardUncertainty> uncertainties() {
        List<Double> stated = stated();
        return Stream.concat(
                        task.readings().stream().map(RigReading::uncertainty),
                        free.stream().map(stated::get).map(StandardUncertainty::absolute))
                .toList();
    }

    /** Of every parameter, relative. */
    List<Double> stated() {
        return Stream.of(
                        task.covers().stream().map(RigTask.Stated::relative),
                        task.lamps().stream().map(RigTask.Stated::relative),
                        meters.stream().map(meter -> Math.max(LEAST_SHARED, meter.shared())))
                .flatMap(each -> each)
                .toList();
    }

    boolean isCover(int index) {
        return index < task.covers().size();
    }

    /** A meter that read alone. */
    Stream<Integer> alone() {
        return meters.size() == 1 ? Stream.of(parameters - 1) : Stream.of();
    }

    List<Integer> held() {
        return IntStream.range(0, parameters)
                .boxed()
                .filter(index -> !free.contains(index))
                .toList();
    }
}
