package dapple.rig;

import dapple.enclosure.PointFacts;
import dapple.light.geometry.Vec;
import dapple.light.zone.RestingSurface;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes the scene of a rig in the public format of {@code docs/scene.md}. */
public final class SceneDocument {
    private static final JsonFactory JSON = new JsonFactory();
    private static final int VERSION = 1;

    private final RigScene rig;
    private final JsonGenerator json;
    private final SceneJson to;

    private SceneDocument(RigScene rig, JsonGenerator json) {
        this.rig = rig;
        this.json = json;
        this.to = new SceneJson(json);
    }

    /** The document with a receiver for each point at which light can be asked for, and the zones if they are asked for. */
    public static String of(RigScene rig, List<PointFacts> points, Optional<ZoneQuestion> zones) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            new SceneDocument(rig, json).write(points, zones);
        }
        return text.toString();
    }

    private void write(List<PointFacts> points, Optional<ZoneQuestion> zones) {
        BodyJson bodies = new BodyJson(to);
        json.writeStartObject();
        json.writeNumberProperty("version", VERSION);
        json.writeNumberProperty("accuracy", RigScene.ACCURACY);
        json.writeArrayPropertyStart("lamps");
        rig.lamps().forEach(new LampJson(to, rig.quantities())::lamp);
        json.writeEndArray();
        json.writeArrayPropertyStart("filters");
        rig.rig().covers().forEach(facts -> bodies.filter(facts.cover()));
        json.writeEndArray();
        json.writeArrayPropertyStart("obstacles");
        rig.rig().furniture().forEach(facts -> bodies.obstacle(facts.furniture().shape()));
        json.writeEndArray();
        json.writeArrayPropertyStart("receivers");
        points.forEach(this::receiver);
        json.writeEndArray();
        zones.ifPresent(this::zones);
        json.writeEndObject();
    }

    private void receiver(PointFacts point) {
        rig.receiver(point).ifPresent(receiver -> {
            json.writeStartObject();
            json.writeStringProperty("id", point.code());
            to.vec("at", receiver.place());
            switch (point.facing()) {
                case STRONGEST -> json.writeStringProperty("facing", "maximum");
                case LEVEL -> to.vec("facing", Vec.UP);
            }
            json.writeEndObject();
        });
    }

    private void zones(ZoneQuestion asked) {
        json.writeObjectPropertyStart("grid");
        double half = asked.stepMetres() / 2;
        to.vec("from", new Vec(half, half, half));
        to.vec(
                "to",
                new Vec(
                        asked.size().widthMetres() - half,
                        asked.size().depthMetres() - half,
                        asked.size().heightMetres() - half));
        json.writeNumberProperty("step", asked.stepMetres());
        json.writeStringProperty("facing", "maximum");
        json.writeEndObject();
        json.writeObjectPropertyStart("zones");
        json.writeStringProperty("quantity", SceneJson.name(asked.quantity()));
        to.range(
                "basking",
                asked.target().basking().low(),
                asked.target().basking().high());
        to.range("shade", 0, asked.target().shadeHigh());
        json.writeNumberProperty("ceiling", asked.target().ceiling());
        json.writeNumberProperty("bodyLength", asked.body().lengthMetres());
        json.writeNumberProperty("evenness", asked.body().evenness());
        asked.reachMetres().ifPresent(reach -> json.writeNumberProperty("reach", reach));
        surfaces(rig.restingSurfaces(asked.size()));
        json.writeEndObject();
    }

    private void surfaces(List<RestingSurface> surfaces) {
        json.writeArrayPropertyStart("surface");
        surfaces.forEach(surface -> {
            json.writeStartObject();
            to.vec("point", surface.point());
            to.vec("normal", surface.normal());
            to.rectangle("within", surface.within());
            json.writeEndObject();
        });
        json.writeEndArray();
    }
}
