package dapple.rig;

import dapple.light.cover.Filter.Rectangle;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/** Writes what a scene's document is made of. */
record SceneJson(JsonGenerator json) {
    private static final Map<Quantity, String> NAMES = Map.of(
            Quantity.UV_INDEX, "uvi",
            Quantity.ILLUMINANCE, "illuminance",
            Quantity.UVA, "uva",
            Quantity.IR_A, "irA",
            Quantity.IR_B, "irB",
            Quantity.IRRADIANCE, "irradiance");

    void range(String name, double low, double high) {
        json.writeArrayPropertyStart(name);
        json.writeNumber(low);
        json.writeNumber(high);
        json.writeEndArray();
    }

    void rectangle(String name, Rectangle rectangle) {
        json.writeArrayPropertyStart(name);
        corner(rectangle.lowX(), rectangle.lowY());
        corner(rectangle.highX(), rectangle.highY());
        json.writeEndArray();
    }

    void corner(double x, double y) {
        json.writeStartArray();
        json.writeNumber(x);
        json.writeNumber(y);
        json.writeEndArray();
    }

    void vec(String name, Vec vec) {
        json.writeArrayPropertyStart(name);
        json.writeNumber(vec.x());
        json.writeNumber(vec.y());
        json.writeNumber(vec.z());
        json.writeEndArray();
    }

    static String name(Quantity quantity) {
        return Optional.ofNullable(NAMES.get(quantity))
                .orElseThrow(() -> new IllegalArgumentException("a scene has no " + quantity));
    }
}
