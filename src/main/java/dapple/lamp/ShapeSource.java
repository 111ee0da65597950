package dapple.lamp;

import dapple.light.geometry.Vec;
import dapple.light.source.Beam;
import dapple.light.source.Source;
import java.util.Optional;
import java.util.stream.IntStream;

/** The shape of a lamp as the engine's source. */
public final class ShapeSource {
    private ShapeSource() {}

    /**
     * The source of a shape.
     *
     * @param along direction of its length; a shape without a length needs none
     * @return empty where the direction is needed and not known
     */
    public static Optional<Source> of(LampShape shape, Optional<Vec> along) {
        if (shape instanceof LampShape.Line line) {
            Optional<Source.Reflector> reflector = line.lobe().map(lobe -> new Source.Reflector(lobe, line.spill()));
            return along.map(way -> new Source.Line(line.lengthMetres(), way, reflector));
        }
        if (shape instanceof LampShape.Cylinder cylinder) {
            return along.map(way -> new Source.Cylinder(cylinder.lengthMetres(), way, cylinder.radiusMetres()));
        }
        if (shape instanceof LampShape.Panel panel) {
            return along.map(way -> new Source.Rectangle(panel.lengthMetres(), way, panel.widthMetres()));
        }
        if (shape instanceof LampShape.Disc disc) {
            return Optional.of(new Source.Disc(disc.radiusMetres()));
        }
        if (shape instanceof LampShape.Measured measured) {
            return Optional.of(spot(table(measured), measured.radiusMetres()));
        }
        LampShape.Spot spot = (LampShape.Spot) shape;
        return Optional.of(spot(Beam.Power.ofBeamAngle(spot.beamAngleDegrees()), spot.radiusMetres()));
    }

    private static Beam table(LampShape.Measured measured) {
        double[] degrees = IntStream.rangeClosed(0, LampShape.Measured.DEGREES)
                .asDoubleStream()
                .toArray();
        double[] relative =
                measured.relative().stream().mapToDouble(Double::doubleValue).toArray();
        return new Beam.Table(degrees, relative);
    }

    private static Source spot(Beam beam, Optional<Double> radiusMetres) {
        return radiusMetres.<Source>map(radius -> new Source.Face(beam, radius)).orElse(new Source.Spot(beam));
    }
}
