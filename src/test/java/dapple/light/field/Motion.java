package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;

/** A turn about the z axis, after a mirroring in x or not. */
record Motion(double degrees, boolean mirrored) {
    Vec of(Vec vec) {
        double x = mirrored ? -vec.x() : vec.x();
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return new Vec(cos * x - sin * vec.y(), sin * x + cos * vec.y(), vec.z());
    }

    double ofYaw(double yawDegrees) {
        return (mirrored ? -yawDegrees : yawDegrees) + degrees;
    }

    Lamp of(Lamp lamp) {
        return new Lamp(
                lamp.id(),
                of(lamp.centre()),
                of(lamp.aim()),
                of(lamp.source()),
                lamp.outputs().stream().map(this::of).toList());
    }

    private Output of(Output output) {
        return output instanceof Output.Reading reading
                ? new Output.Reading(
                        reading.quantity(), reading.reading(), of(reading.at()), of(reading.facing()), reading.factor())
                : output;
    }

    private Source of(Source source) {
        if (source instanceof Source.Line line) {
            return new Source.Line(line.length(), of(line.along()), line.reflector());
        }
        if (source instanceof Source.Cylinder cylinder) {
            return new Source.Cylinder(cylinder.length(), of(cylinder.along()), cylinder.radius());
        }
        return source instanceof Source.Rectangle rectangle
                ? new Source.Rectangle(rectangle.length(), of(rectangle.along()), rectangle.width())
                : source;
    }
}
