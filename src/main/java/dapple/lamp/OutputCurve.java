package dapple.lamp;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a sensor would show of a lamp alone at distances from 0.1 to 1.5 m along its aim, facing back, with nothing between:
 * by the light engine, from one stated output.
 *
 * @param distancesMetres ascending
 * @param amounts one a distance, in the unit of the output
 */
public record OutputCurve(LampOutput output, List<Double> distancesMetres, List<Double> amounts) {
    static final double NEAREST_METRES = 0.1;
    static final double FARTHEST_METRES = 1.5;

    /** Between so many steps, each 4.6 % farther, straight lines in the logarithms are within 0.03 % of the curve. */
    private static final int STEPS = 60;

    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Vec LENGTHWISE = new Vec(1, 0, 0);

    /** Expanded uncertainty over the standard one, k = 2 [jcgm100]. */
    private static final double COVERAGE = 2;

    /** Where an amount is reached. */
    public sealed interface Reached {
        record At(double metres) implements Reached {}

        /** It is below the amount at the nearest distance already. */
        record Nearer() implements Reached {}

        /** It is above the amount at the farthest distance still. */
        record Farther() implements Reached {}

        /** Whole centimetres, where it is between both. */
        default Optional<Long> centimetres() {
            return this instanceof At at ? Optional.of(Math.round(100 * at.metres())) : Optional.empty();
        }

        default boolean isNearer() {
            return this instanceof Nearer;
        }
    }

    public OutputCurve {
        distancesMetres = List.copyOf(distancesMetres);
        amounts = List.copyOf(amounts);
    }

    /** The curve of an output; empty where the shape is not known, or the output was read inside what shines. */
    public static Optional<OutputCurve> of(LampOutput output, Optional<LampShape> shape) {
        return shape.filter(known -> isOutside(known, output.distanceMetres()))
                .flatMap(known -> ShapeSource.of(known, Optional.of(LENGTHWISE)))
                .map(source -> of(output, source));
    }

    /** Whether the curve and the reading lie outside a thick tube. */
    private static boolean isOutside(LampShape shape, double metres) {
        return !(shape instanceof LampShape.Cylinder tube) || Math.min(metres, NEAREST_METRES) > tube.radiusMetres();
    }

    private static OutputCurve of(LampOutput output, Source source) {
        Output.Reading reading =
                new Output.Reading(output.quantity(), output.reading(), DOWN.times(output.distanceMetres()), Vec.UP, 1);
        Lamp lamp = new Lamp("lamp", new Vec(0, 0, 0), DOWN, source, List.of(reading));
        Field field = Field.of(new Scene(Scene.USUAL_ACCURACY, List.of(lamp), List.of(), List.of()));
        List<Double> distances =
                IntStream.rangeClosed(0, STEPS).mapToObj(OutputCurve::distance).toList();
        List<Double> amounts = distances.stream()
                .map(metres -> field.at(new Receiver(DOWN.times(metres), new Facing.Direction(Vec.UP)))
                        .values()
                        .getOrDefault(output.quantity(), 0.0))
                .toList();
        return new OutputCurve(output, distances, amounts);
    }

    private static double distance(int step) {
        return NEAREST_METRES * Math.pow(FARTHEST_METRES / NEAREST_METRES, (double) step / STEPS);
    }

    /** The farthest place where the amount is still reached. */
    public Reached reaches(double amount) {
        if (amounts.get(0) < amount) {
            return new Reached.Nearer();
        }
        for (int index = 1; index < amounts.size(); index++) {
            if (amounts.get(index) < amount) {
                return new Reached.At(between(index, amount));
            }
        }
        return new Reached.Farther();
    }

    /** Straight in the logarithms. */
    private double between(int index, double amount) {
        double fall = Math.log(amounts.get(index - 1) / amounts.get(index));
        double share = Math.log(amounts.get(index - 1) / amount) / fall;
        double near = distancesMetres.get(index - 1);
        return near * Math.pow(distancesMetres.get(index) / near, share);
    }

    /** What an amount may be off by, over it, to each side: twice the standard uncertainty of the output. */
    double relativeSpread() {
        return COVERAGE * output.relativeUncertainty();
    }

    /** The nearest place where the amount may be reached last, if all is as weak as it may be. */
    public Reached reachesAtLeast(double amount) {
        double weakest = 1 - relativeSpread();
        return weakest > 0 ? reaches(amount / weakest) : new Reached.Nearer();
    }

    /** The farthest such place, if all is as strong as it may be. */
    public Reached reachesAtMost(double amount) {
        return reaches(amount / (1 + relativeSpread()));
    }
}
