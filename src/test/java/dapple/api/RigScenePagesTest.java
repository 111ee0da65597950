package dapple.api;

import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.covered;
import static dapple.rig.RigExamples.fitting;
import static dapple.rig.RigExamples.furnished;
import static dapple.rig.RigExamples.lamp;
import static dapple.rig.RigExamples.rig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.enclosure.Facing;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.lamp.LampClass;
import dapple.lamp.LampShape;
import dapple.light.field.Field;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.zone.Body;
import dapple.light.zone.ZoneTarget;
import dapple.rig.FurnitureShape;
import dapple.rig.Mount;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import dapple.rig.RigScene;
import dapple.rig.SceneDocument;
import dapple.rig.ZoneQuestion;
import dapple.testing.PagesTest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** A rig that is exported and sent back gives the same light as in the program itself. */
@PagesTest
class RigScenePagesTest extends ProgramPages {
    private static final String PATH = "/api/v1/light-field";

    /** Directions are made of length 1 once more when they are read: the last bits may differ. */
    private static final double LAST_BITS = 1e-9;

    private static final List<PointFacts> POINTS = List.of(
            point("P1", Facing.STRONGEST, 0.6, 0.3, 0.4),
            point("P2", Facing.LEVEL, 0.2, 0.2, 0.1),
            point("P3", Facing.STRONGEST, 0.95, 0.4, 0.05));

    static Stream<LampShape> shapes() {
        return Stream.of(
                new LampShape.Line(0.55, Optional.of(1.5), 0.05),
                new LampShape.Line(0.55, Optional.empty(), 0),
                new LampShape.Cylinder(0.55, 0.008),
                new LampShape.Panel(0.4, 0.05),
                new LampShape.Disc(0.05),
                new LampShape.Spot(40, Optional.empty()),
                new LampShape.Spot(25, Optional.of(0.03)));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void aLampOfEachShapeGivesTheSameNumbers(LampShape shape) throws Exception {
        requireSame(rig(fitting(lamp("L1", LampClass.TUBE_T5, Optional.of(shape)), leaning())));
    }

    static Stream<FurnitureShape> furniture() {
        return Stream.of(
                new FurnitureShape.Block(new Vec(0.4, 0.1, 0.6), new Vec(0.65, 0.5, 0.62), 20),
                new FurnitureShape.Post(new Vec(0.5, 0.3, 0.45), 0.2, 0.05),
                new FurnitureShape.Branch(new Vec(0.2, 0.3, 0.6), new Vec(1, 0.3, 0.7), 0.03));
    }

    @ParameterizedTest
    @MethodSource("furniture")
    void furnitureOfEachShapeGivesTheSameNumbers(FurnitureShape shape) throws Exception {
        requireSame(furnished(tube(), shape));
    }

    @Test
    void aMeshInLayersGivesTheSameNumbers() throws Exception {
        requireSame(covered(tube(), RigExamples.mesh(Optional.of(0.8)).withLayers(2)));
    }

    @Test
    void aSheetThatLeavesAQuantityOpenGivesTheSameNumbers() throws Exception {
        requireSame(covered(tube(), RigExamples.sheet(0.7)));
    }

    @Test
    void aSheetTakenTwiceGivesTheSameNumbers() throws Exception {
        requireSame(covered(tube(), RigExamples.sheet(0.7).withLayers(2)));
    }

    @Test
    void zonesAreAnsweredToo() throws Exception {
        ZoneQuestion asked = new ZoneQuestion(
                new InnerSize(1.2, 0.6, 0.8),
                0.1,
                Quantity.UV_INDEX,
                new ZoneTarget(new Interval(1, 3), 0.3, 4),
                new Body(0.1, Body.USUAL_EVENNESS),
                Optional.of(0.2));
        Rig slab = furnished(tube(), new FurnitureShape.Block(new Vec(0.4, 0.1, 0), new Vec(0.8, 0.5, 0.3), 10));
        JsonNode answer = answer(PATH, SceneDocument.of(RigScene.of(slab), POINTS, Optional.of(asked)));
        assertThat(answer.path("zones").path("places").asInt()).isPositive();
        assertThat(answer.path("zones").has("patch")).isTrue();
    }

    private void requireSame(Rig rig) throws Exception {
        RigScene scene = RigScene.of(rig);
        JsonNode answer = answer(PATH, SceneDocument.of(scene, POINTS, Optional.empty()));
        Field field = Field.of(scene.scene());
        for (int index = 0; index < POINTS.size(); index++) {
            Map<Quantity, Double> values =
                    field.at(scene.receiver(POINTS.get(index)).orElseThrow()).values();
            JsonNode answered = answer.path("receivers").path(index).path("values");
            assertThat(answered.size()).isEqualTo(values.size());
            requireSame(answered, values);
        }
    }

    private static void requireSame(JsonNode answered, Map<Quantity, Double> values) {
        values.forEach((quantity, value) -> assertThat(
                        answered.path(Names.of(quantity)).asDouble())
                .isCloseTo(value, within(LAST_BITS * Math.max(1, value))));
    }

    private static Rig tube() {
        LampShape shape = new LampShape.Line(0.55, Optional.of(1.5), 0.05);
        return rig(fitting(lamp("L1", LampClass.TUBE_T5, Optional.of(shape)), Optional.of(above(0.6, 0.3, 0.9))));
    }

    /** Across its length and along it. */
    private static Optional<Mount> leaning() {
        return Optional.of(new Mount(new Vec(0.6, 0.3, 0.9), new Vec(0.1, 0.3, -1), Optional.of(new Vec(1, 0, 0))));
    }

    private static PointFacts point(String code, Facing facing, double x, double y, double z) {
        return new PointFacts(
                1,
                1,
                code,
                "a place",
                PointRole.BASKING,
                facing,
                Optional.of(new Position(x, y, z)),
                List.of(Quantity.UV_INDEX),
                Set.of());
    }
}
