package dapple.rig;

import dapple.light.geometry.Vec;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import java.util.Map;
import tools.jackson.core.JsonGenerator;

/** Writes cover and furniture into a scene's document. */
final class BodyJson {
    private final SceneJson to;
    private final JsonGenerator json;

    BodyJson(SceneJson to) {
        this.to = to;
        this.json = to.json();
    }

    void filter(Cover cover) {
        if (cover.heightMetres().isEmpty()) {
            return;
        }
        json.writeStartObject();
        json.writeStringProperty("kind", cover.material().isMesh() || cover.layers() > 1 ? "mesh" : "sheet");
        json.writeObjectPropertyStart("plane");
        to.vec("point", new Vec(0, 0, cover.heightMetres().get()));
        to.vec("normal", Vec.UP);
        json.writeEndObject();
        cover.over().ifPresent(over -> to.rectangle("over", over));
        if (cover.material() instanceof CoverMaterial.Weave weave) {
            json.writeNumberProperty("wire", weave.wireMetres());
            json.writeNumberProperty("pitch", weave.pitchMetres());
        } else if (cover.material() instanceof CoverMaterial.Passing known) {
            transmittance(known);
        }
        if (cover.material().isMesh() || cover.layers() > 1) {
            json.writeNumberProperty("layers", cover.layers());
        }
        json.writeEndObject();
    }

    private void transmittance(CoverMaterial.Passing known) {
        json.writeObjectPropertyStart("transmittance");
        known.byQuantity().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> json.writeNumberProperty(
                        SceneJson.name(entry.getKey()), entry.getValue().share()));
        json.writeEndObject();
    }

    void obstacle(FurnitureShape shape) {
        json.writeStartObject();
        if (shape instanceof Block block) {
            json.writeStringProperty("shape", "box");
            to.vec("min", block.least());
            to.vec("max", block.greatest());
            json.writeNumberProperty("yaw", block.yawDegrees());
        } else if (shape instanceof Post post) {
            json.writeStringProperty("shape", "cylinder");
            to.vec("base", post.base());
            json.writeNumberProperty("height", post.heightMetres());
            json.writeNumberProperty("radius", post.radiusMetres());
        } else if (shape instanceof Branch branch) {
            json.writeStringProperty("shape", "capsule");
            to.vec("from", branch.from());
            to.vec("to", branch.to());
            json.writeNumberProperty("radius", branch.radiusMetres());
        }
        json.writeEndObject();
    }
}
