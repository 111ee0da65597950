package dapple.prediction;

import dapple.drawing.CutPlane;
import dapple.drawing.LitPlane;
import dapple.drawing.LitPlane.Grid;
import dapple.drawing.Place;
import dapple.drawing.Plan;
import dapple.drawing.Section;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.survey.Crew;
import dapple.light.survey.FoundZones;
import dapple.light.survey.Needs;
import dapple.light.survey.PlainLight;
import dapple.light.survey.ZoneSurvey;
import dapple.light.zone.Zone;
import dapple.prediction.EnclosureScene.Cut;
import dapple.prediction.LightInside.Planes;
import dapple.prediction.LightInside.Zones;
import dapple.rig.RigScene;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The work on the light of one enclosure, its zones and planes in one quantity. */
final class LightWork {
    /** The amount of work is bounded by {@link Mesh}, so that no deadline is needed. */
    private static final Crew ONE = Crew.ofOne(() -> {});

    private final EnclosureScene scene;
    private final RigScene rig;
    private final Quantity quantity;
    private final Mesh mesh;
    private final Crew crew;

    LightWork(EnclosureScene scene) {
        this(scene, Quantity.UV_INDEX);
    }

    LightWork(EnclosureScene scene, Quantity quantity) {
        this(scene, quantity, Mesh.FINE, ONE);
    }

    LightWork(EnclosureScene scene, Quantity quantity, Mesh mesh, Crew crew) {
        this.scene = scene;
        this.rig = scene.rig();
        this.quantity = quantity;
        this.mesh = mesh;
        this.crew = crew;
    }

    LightInside done() {
        Map<String, Map<Quantity, Predicted>> atPoints = atPoints();
        return new LightInside(atPoints, planes(), zones().map(found -> within(found, atPoints)));
    }

    Map<String, Map<Quantity, Predicted>> atPoints() {
        if (!rig.isPredictable()) {
            return Map.of();
        }
        PredictedLight light = PredictedLight.of(rig);
        Map<String, Map<Quantity, Predicted>> found = new HashMap<>();
        scene.points().forEach(point -> found.put(point.code(), light.at(point)));
        return Map.copyOf(found);
    }

    Optional<Planes> planes() {
        return rig.quantities().contains(quantity) ? scene.size().map(this::planes) : Optional.empty();
    }

    Optional<FoundZones> zones() {
        return scene.zones(quantity).flatMap(needs -> scene.size().map(size -> zones(needs, size)));
    }

    private FoundZones zones(Needs needs, InnerSize size) {
        return ZoneSurvey.of(rig.scene(), needs.with(mesh.grain()), mesh.lattice(size), crew);
    }

    /** The shares of the zones, and what they may be. */
    Zones within(FoundZones found, Map<String, Map<Quantity, Predicted>> atPoints) {
        double step = scene.size().map(mesh::stepMetres).orElseThrow();
        Map<Zone, Interval> within = factors(atPoints).map(found::shares).orElse(Map.of());
        return new Zones(step, found, within);
    }

    /** By what all light may be multiplied: as the prediction at the basking point may be off. */
    private Optional<Interval> factors(Map<String, Map<Quantity, Predicted>> atPoints) {
        return scene.baskingPoint()
                .map(PointFacts::code)
                .map(code -> atPoints.getOrDefault(code, Map.of()))
                .flatMap(light -> Optional.ofNullable(light.get(quantity)))
                .filter(light -> light.interval().low() > 0)
                .map(light -> new Interval(
                        light.interval().low() / light.amount(),
                        light.interval().high() / light.amount()));
    }

    private Planes planes(InnerSize size) {
        Cut cut = scene.cut(size);
        PlainLight light = new PlainLight(rig.scene(), rig.scene().lamps(), List.of(quantity), crew);
        return new Planes(
                cut,
                plane(light, new Section(cut.depthMetres()), new Place(size.widthMetres(), size.heightMetres())),
                plane(light, new Plan(cut.heightMetres()), new Place(size.widthMetres(), size.depthMetres())));
    }

    private LitPlane plane(PlainLight light, CutPlane plane, Place far) {
        double step = mesh.drawnMetres(far.acrossMetres(), far.upMetres());
        Grid grid = Grid.over(new Place(0, 0), far, step);
        int columns = grid.columns();
        double[] amounts = light.at(List.of(quantity), columns * grid.rows(), index -> place(grid, plane, index))[0];
        return LitPlane.of(grid, at -> amounts[index(grid, at)]);
    }

    private static Vec place(Grid grid, CutPlane plane, int index) {
        return plane.in(grid.place(index % grid.columns(), Math.floorDiv(index, grid.columns())));
    }

    private static int index(Grid grid, Place at) {
        long column = Math.round(at.acrossMetres() / grid.cell().acrossMetres());
        long row = Math.round(at.upMetres() / grid.cell().upMetres());
        return Math.toIntExact(row * grid.columns() + column);
    }
}
