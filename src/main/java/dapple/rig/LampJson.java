package dapple.rig;

import dapple.lamp.LampOutput;
import dapple.lamp.LampShape;
import dapple.light.quantity.Quantity;
import java.util.Comparator;
import java.util.Set;
import tools.jackson.core.JsonGenerator;

/** Writes lamps into a scene's document, with what they give of some quantities. */
final class LampJson {
    private final SceneJson to;
    private final JsonGenerator json;
    private final Set<Quantity> quantities;

    LampJson(SceneJson to, Set<Quantity> quantities) {
        this.to = to;
        this.json = to.json();
        this.quantities = quantities;
    }

    void lamp(LampInScene lamp) {
        json.writeStartObject();
        json.writeStringProperty("id", lamp.lamp().tag());
        to.vec("centre", lamp.mount().centre());
        to.vec("aim", lamp.mount().aim());
        json.writeObjectPropertyStart("source");
        lamp.lamp().model().shape().ifPresent(this::source);
        lamp.mount().along().filter(along -> isLong(lamp)).ifPresent(along -> to.vec("along", along));
        json.writeEndObject();
        json.writeArrayPropertyStart("output");
        lamp.outputs().values().stream()
                .filter(output -> quantities.contains(output.quantity()))
                .sorted(Comparator.comparing(LampOutput::quantity))
                .forEach(this::output);
        json.writeEndArray();
        json.writeEndObject();
    }

    private static boolean isLong(LampInScene lamp) {
        return lamp.lamp()
                .model()
                .shape()
                .filter(shape -> !(shape instanceof LampShape.Spot
                        || shape instanceof LampShape.Measured
                        || shape instanceof LampShape.Disc))
                .isPresent();
    }

    private void source(LampShape shape) {
        if (shape instanceof LampShape.Line line) {
            json.writeStringProperty("shape", "line");
            json.writeNumberProperty("length", line.lengthMetres());
            line.lobe().ifPresent(lobe -> {
                json.writeNumberProperty("lobe", lobe);
                json.writeNumberProperty("spill", line.spill());
            });
        } else if (shape instanceof LampShape.Cylinder cylinder) {
            json.writeStringProperty("shape", "cylinder");
            json.writeNumberProperty("length", cylinder.lengthMetres());
            json.writeNumberProperty("radius", cylinder.radiusMetres());
        } else if (shape instanceof LampShape.Panel panel) {
            json.writeStringProperty("shape", "rectangle");
            json.writeNumberProperty("length", panel.lengthMetres());
            json.writeNumberProperty("width", panel.widthMetres());
        } else if (shape instanceof LampShape.Disc disc) {
            json.writeStringProperty("shape", "disc");
            json.writeNumberProperty("radius", disc.radiusMetres());
        } else if (shape instanceof LampShape.Spot spot) {
            json.writeStringProperty("shape", "beam");
            json.writeNumberProperty("beamAngle", spot.beamAngleDegrees());
            spot.radiusMetres().ifPresent(radius -> json.writeNumberProperty("radius", radius));
        } else if (shape instanceof LampShape.Measured measured) {
            json.writeStringProperty("shape", "beam");
            table(measured);
            measured.radiusMetres().ifPresent(radius -> json.writeNumberProperty("radius", radius));
        }
    }

    private void table(LampShape.Measured measured) {
        json.writeObjectPropertyStart("table");
        json.writeArrayPropertyStart("theta");
        for (int degree = 0; degree < measured.relative().size(); degree++) {
            json.writeNumber(degree);
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("relative");
        measured.relative().forEach(share -> json.writeNumber(share.doubleValue()));
        json.writeEndArray();
        json.writeEndObject();
    }

    private void output(LampOutput output) {
        json.writeStartObject();
        json.writeStringProperty("quantity", SceneJson.name(output.quantity()));
        json.writeNumberProperty("reading", output.reading());
        json.writeNumberProperty("distance", output.distanceMetres());
        json.writeEndObject();
    }
}
