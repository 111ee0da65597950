package dapple.api;

import dapple.api.Asked.Grid;
import dapple.light.cover.Filter;
import dapple.light.field.Scene;
import dapple.light.field.SourcePlaces;
import dapple.light.geometry.Solid;
import dapple.light.source.Lamp;
import java.util.List;
import java.util.Optional;

/** Reads a whole document; the first thing that is wrong refuses it. */
final class SceneReader {
    private SceneReader() {}

    static Asked read(Part document, Deadline deadline) {
        document.object(
                "version", "accuracy", "lamps", "filters", "obstacles", "receivers", "grid", "zones", "uncertainty");
        if (document.need("version").number() != 1) {
            throw document.need("version").fault("The version must be 1.");
        }
        Scene scene = scene(document, deadline);
        ReceiverReader receivers = new ReceiverReader(scene, deadline);
        if (!document.has("grid")) {
            document.need("receivers");
        }
        Optional<Grid> grid = document.find("grid").map(part -> GridReader.grid(part, receivers));
        if (grid.isEmpty() && document.has("zones")) {
            document.need("grid");
        }
        return new Asked(
                scene,
                document.find("receivers").map(receivers::read).orElse(List.of()),
                grid,
                document.find("zones").map(part -> new ZonesReader(scene.lamps()).read(part)),
                document.find("uncertainty").map(GridReader::uncertainty));
    }

    private static Scene scene(Part document, Deadline deadline) {
        double accuracy =
                document.find("accuracy").map(part -> part.number(1e-6, 0.05)).orElse(Scene.USUAL_ACCURACY);
        List<Lamp> lamps = LampReader.read(document.need("lamps"));
        FilterReader filterReader = new FilterReader(lamps);
        List<Filter> filters = document.find("filters").map(filterReader::read).orElse(List.of());
        List<Solid> solids =
                document.find("obstacles").map(ObstacleReader::read).orElse(List.of());
        Scene scene = new Scene(accuracy, lamps, filters, solids);
        requireLampsOutside(document.need("lamps"), scene, deadline);
        return scene;
    }

    private static void requireLampsOutside(Part part, Scene scene, Deadline deadline) {
        for (int index = 0; index < scene.lamps().size(); index++) {
            deadline.check();
            if (SourcePlaces.anyInside(scene.lamps().get(index), scene.solids())) {
                throw part.items().get(index).need("centre").fault("A source must not lie inside an obstacle.");
            }
        }
    }
}
