package dapple.light.calibration;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/** What the field says of a bench, by the values of the free parameters. */
final class BenchModel {
    /** As close as a scene may ask, so that differences are not noise. */
    private static final double CLOSE = 1e-6;

    /** What beams and reflectors take. */
    private static final double MOST_EXPONENT = 100_000;

    private static final double MOST_LOBE = 1000;

    /** How much of the way to the nearest reading a beam may seem to come from in front of its face. */
    private static final double FORWARD = 0.9;

    private final Bench bench;
    private final List<Parameter> free;
    private List<Double> shapeSeen = List.of();
    private Optional<RealVector> seen = Optional.empty();

    BenchModel(Bench bench) {
        this.bench = bench;
        this.free = bench.free();
    }

    List<Parameter> free() {
        return free;
    }

    /** How many of the parameters are of the shape; they come first. */
    int shapes() {
        return (int) free.stream().filter(Parameter.Shape.class::isInstance).count();
    }

    List<Coordinate> coordinates() {
        return free.stream().map(this::coordinate).toList();
    }

    private Coordinate coordinate(Parameter parameter) {
        if (!(parameter instanceof Parameter.Shape shape)) {
            return new Coordinate.Logarithm(0);
        }
        return switch (shape) {
            case OFFSET -> new Coordinate.Logarithm(FORWARD * nearest());
            case EXPONENT -> new Coordinate.Power(MOST_EXPONENT);
            case SPILL -> new Coordinate.Share();
            case LOBE -> new Coordinate.Power(MOST_LOBE);
        };
    }

    private double nearest() {
        return bench.readings().stream()
                .mapToDouble(
                        reading -> reading.at().minus(bench.lamp().centre()).length())
                .min()
                .orElseThrow();
    }

    /** What the lamp says of its shape. */
    double shape(Parameter.Shape shape) {
        Source source = bench.lamp().source();
        return switch (shape) {
            case OFFSET -> 0;
            case EXPONENT -> exponent(source);
            case LOBE -> reflector(source).lobe();
            case SPILL -> reflector(source).spill();
        };
    }

    private static double exponent(Source source) {
        Beam beam = source instanceof Source.Face face ? face.beam() : ((Source.Spot) source).beam();
        return ((Beam.Power) beam).exponent();
    }

    private static Source.Reflector reflector(Source source) {
        return ((Source.Line) source).reflector().orElseThrow();
    }

    /** What would be read. The same shape is looked at once. */
    RealVector readings(RealVector values) {
        List<Double> shape = new ArrayList<>();
        for (int index = 0; index < shapes(); index++) {
            shape.add(values.getEntry(index));
        }
        if (seen.isEmpty() || !shape.equals(shapeSeen)) {
            seen = Optional.of(unscaled(values));
            shapeSeen = shape;
        }
        RealVector readings = seen.orElseThrow().copy();
        for (int index = 0; index < readings.getDimension(); index++) {
            double scale = scale(bench.readings().get(index).quantity(), values);
            readings.setEntry(index, scale * readings.getEntry(index));
        }
        return readings;
    }

    private double scale(Quantity quantity, RealVector values) {
        int index = free.indexOf(new Parameter.Emission(quantity));
        return index < 0 ? 1 : values.getEntry(index);
    }

    /** With a free emission of 1. */
    RealVector unscaled(RealVector values) {
        Field field = Field.of(new Scene(CLOSE, List.of(lamp(values, true)), List.of(), List.of()));
        Map<Receiver, Light> lights = new HashMap<>();
        RealVector readings = new ArrayRealVector(bench.readings().size());
        for (int index = 0; index < readings.getDimension(); index++) {
            BenchReading reading = bench.readings().get(index);
            Receiver sensor = new Receiver(reading.at(), new Facing.Direction(reading.facing()));
            Light light = lights.computeIfAbsent(sensor, field::at);
            readings.setEntry(index, light.values().getOrDefault(reading.quantity(), 0.0));
        }
        return readings;
    }

    /** The lamp with these values. */
    Lamp lamp(RealVector values) {
        return lamp(values, false);
    }

    private Lamp lamp(RealVector values, boolean unit) {
        Lamp lamp = bench.lamp();
        Vec centre = lamp.centre().minus(lamp.aim().times(value(Parameter.Shape.OFFSET, values)));
        return new Lamp(lamp.id(), centre, lamp.aim(), source(values), outputs(values, unit));
    }

    private double value(Parameter.Shape shape, RealVector values) {
        int index = free.indexOf(shape);
        return index < 0 ? shape(shape) : values.getEntry(index);
    }

    private Source source(RealVector values) {
        Source source = bench.lamp().source();
        if (source instanceof Source.Line line && line.reflector().isPresent()) {
            Source.Reflector reflector =
                    new Source.Reflector(value(Parameter.Shape.LOBE, values), value(Parameter.Shape.SPILL, values));
            return new Source.Line(line.length(), line.along(), Optional.of(reflector));
        }
        if (!Parameter.Shape.of(source).contains(Parameter.Shape.EXPONENT)) {
            return source;
        }
        Beam beam = new Beam.Power(value(Parameter.Shape.EXPONENT, values));
        return source instanceof Source.Face face ? new Source.Face(beam, face.radius()) : new Source.Spot(beam);
    }

    /** What is free in place of what the lamp said of it; the rest as it is, for what was read alone where only that counts. */
    private List<Output> outputs(RealVector values, boolean unit) {
        List<Output> outputs = new ArrayList<>();
        for (Output output : bench.lamp().outputs()) {
            boolean replaced = free.contains(new Parameter.Emission(output.quantity()));
            if (!replaced && (!unit || bench.quantities().contains(output.quantity()))) {
                outputs.add(output);
            }
        }
        for (Parameter parameter : free) {
            if (parameter instanceof Parameter.Emission emission) {
                double amount = unit ? 1 : scale(emission.quantity(), values);
                outputs.add(new Output.Emission(emission.quantity(), amount, 1));
            }
        }
        return outputs;
    }
}
