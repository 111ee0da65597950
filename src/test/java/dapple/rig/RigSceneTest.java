package dapple.rig;

import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.covered;
import static dapple.rig.RigExamples.fitting;
import static dapple.rig.RigExamples.furnished;
import static dapple.rig.RigExamples.lamp;
import static dapple.rig.RigExamples.output;
import static dapple.rig.RigExamples.rig;
import static dapple.rig.RigExamples.spot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.lamp.LampShape;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Source;
import dapple.light.zone.RestingSurface;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import dapple.rig.LeftOut.Why;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RigSceneTest {
    private static final Optional<Mount> MOUNT = Optional.of(above(0.6, 0.3, 0.9));
    private static final Rig SPOT = rig(fitting(spot("L1"), MOUNT));
    private static final InnerSize SIZE = new InnerSize(1.2, 0.6, 1);

    /** The accuracy of the scene. */
    private static final double ACCURACY = RigScene.ACCURACY;

    /** The inverse-square law: a point source that gives 4 at 0.3 m gives 1 at 0.6 m. */
    @Test
    void aSpotAtTwiceTheDistanceGivesAQuarter() {
        assertThat(uvi(RigScene.of(SPOT), new Vec(0.6, 0.3, 0.3))).isCloseTo(1, within(ACCURACY));
    }

    /** Open area of a square weave at normal incidence, (1 − d/p)² = (1 − 0.25/2.5)². */
    @Test
    void aMeshLetsItsOpenAreaThrough() {
        RigScene scene = RigScene.of(covered(SPOT, RigExamples.mesh(Optional.of(0.8))));
        assertThat(uvi(scene, new Vec(0.6, 0.3, 0.3))).isCloseTo(0.81, within(ACCURACY));
    }

    @Test
    void aSecondLayerTakesTheSameShareAgain() {
        RigScene scene =
                RigScene.of(covered(SPOT, RigExamples.mesh(Optional.of(0.8)).withLayers(2)));
        assertThat(uvi(scene, new Vec(0.6, 0.3, 0.3))).isCloseTo(0.81 * 0.81, within(ACCURACY));
    }

    @Test
    void aSlabShades() {
        Rig shaded = furnished(SPOT, new Block(new Vec(0.4, 0.1, 0.5), new Vec(0.8, 0.5, 0.52), 0));
        assertThat(uvi(RigScene.of(shaded), new Vec(0.6, 0.3, 0.3))).isZero();
    }

    @Test
    void aQuantityThatACoverDoesNotNameIsNotPredicted() {
        RigScene scene = RigScene.of(covered(SPOT, RigExamples.sheet(0.5)));
        assertThat(scene.quantities()).containsExactly(Quantity.UV_INDEX);
        assertThat(scene.leftOut())
                .containsExactly(new LeftOut("front glass", Quantity.ILLUMINANCE, Why.COVER_QUANTITY_UNKNOWN));
        assertThat(uvi(scene, new Vec(0.6, 0.3, 0.3))).isCloseTo(0.5, within(ACCURACY));
    }

    @Test
    void underACoverOfUnknownHeightNothingIsPredicted() {
        RigScene scene = RigScene.of(covered(SPOT, RigExamples.mesh(Optional.empty())));
        assertThat(scene.isPredictable()).isFalse();
        assertThat(scene.leftOut()).contains(new LeftOut("lid mesh", Why.COVER_WITHOUT_HEIGHT));
    }

    static Stream<Map.Entry<FittingFacts, Why>> unseen() {
        LampShape tube = new LampShape.Line(0.55, Optional.empty(), 0);
        LampShape thick = new LampShape.Cylinder(0.55, 0.4);
        LampFacts silent = lamp("L2", LampClass.TUBE_T5, Optional.of(tube), List.of());
        Mount spotlike = new Mount(new Vec(0.6, 0.3, 0.9), RigExamples.DOWN, Optional.empty());
        return Stream.of(
                Map.entry(fitting(spot("L2"), Optional.empty()), Why.LAMP_WITHOUT_POSITION),
                Map.entry(fitting(lamp("L2", LampClass.TUBE_T5, Optional.empty()), MOUNT), Why.LAMP_WITHOUT_SHAPE),
                Map.entry(fitting(silent, MOUNT), Why.LAMP_WITHOUT_OUTPUT),
                Map.entry(
                        fitting(lamp("L2", LampClass.TUBE_T5, Optional.of(tube)), Optional.of(spotlike)),
                        Why.LAMP_WITHOUT_DIRECTION),
                Map.entry(fitting(lamp("L2", LampClass.TUBE_T5, Optional.of(thick)), MOUNT), Why.LAMP_READ_INSIDE));
    }

    @ParameterizedTest
    @MethodSource("unseen")
    void whatTheEngineCannotSeeIsSaid(Map.Entry<FittingFacts, Why> unseen) {
        RigScene scene = RigScene.of(rig(unseen.getKey()));
        assertThat(scene.isPredictable()).isFalse();
        assertThat(scene.leftOut()).containsExactly(new LeftOut("L2", unseen.getValue()));
    }

    @Test
    void aLampInsideFurnitureIsSaid() {
        Rig buried = furnished(SPOT, new Block(new Vec(0.4, 0.1, 0.8), new Vec(0.8, 0.5, 1), 0));
        assertThat(RigScene.of(buried).leftOut()).containsExactly(new LeftOut("L1", Why.LAMP_IN_FURNITURE));
    }

    @Test
    void aTubeThatReachesIntoFurnitureIsSaid() {
        LampFacts tube = lamp("L1", LampClass.TUBE_T5, Optional.of(new LampShape.Line(0.55, Optional.empty(), 0)));
        Rig buried = furnished(rig(fitting(tube, MOUNT)), new Block(new Vec(0.8, 0.1, 0.8), new Vec(1.1, 0.5, 1), 0));
        assertThat(RigScene.of(buried).leftOut()).containsExactly(new LeftOut("L1", Why.LAMP_IN_FURNITURE));
    }

    @Test
    void besideALampOfUnknownOutputTheSumIsALeast() {
        LampFacts other = lamp("L2", LampClass.TUBE_T5, Optional.empty());
        RigScene scene = RigScene.of(rig(fitting(spot("L1"), MOUNT), fitting(other, MOUNT)));
        assertThat(scene.isPredictable()).isTrue();
        assertThat(scene.isWhole(Quantity.UV_INDEX)).isFalse();
    }

    @Test
    void aLampThatGivesNoUltravioletLacksNothingInTheUvIndex() {
        LampShape shape = new LampShape.Spot(60, Optional.of(0.03));
        LampFacts halogen = lamp(
                "L2", LampClass.TUNGSTEN_HALOGEN, Optional.of(shape), List.of(output(Quantity.ILLUMINANCE, 20_000)));
        RigScene scene = RigScene.of(rig(fitting(spot("L1"), MOUNT), fitting(halogen, MOUNT)));
        assertThat(scene.isWhole(Quantity.UV_INDEX)).isTrue();
        assertThat(scene.isWhole(Quantity.ILLUMINANCE)).isTrue();
    }

    @Test
    void uncertaintiesComeLampByLamp() {
        assertThat(RigScene.of(SPOT).relativeUncertainties())
                .containsExactly(Map.of(Quantity.UV_INDEX, 0.1, Quantity.ILLUMINANCE, 0.1));
    }

    static Stream<Map.Entry<LampShape, Class<?>>> shapes() {
        return Stream.of(
                Map.entry(new LampShape.Line(0.5, Optional.of(1.5), 0.1), Source.Line.class),
                Map.entry(new LampShape.Cylinder(0.5, 0.01), Source.Cylinder.class),
                Map.entry(new LampShape.Panel(0.5, 0.05), Source.Rectangle.class),
                Map.entry(new LampShape.Disc(0.05), Source.Disc.class),
                Map.entry(new LampShape.Spot(40, Optional.empty()), Source.Spot.class),
                Map.entry(new LampShape.Spot(40, Optional.of(0.03)), Source.Face.class));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void aLampOfEachShapeGivesWhatWasReadWhereItWasRead(Map.Entry<LampShape, Class<?>> shape) {
        RigScene scene = RigScene.of(rig(fitting(lamp("L1", LampClass.LED_BAR, Optional.of(shape.getKey())), MOUNT)));
        assertThat(scene.scene().lamps()).extracting(Lamp::source).hasExactlyElementsOfTypes(shape.getValue());
        assertThat(uvi(scene, new Vec(0.6, 0.3, 0.6))).isCloseTo(4, within(4 * ACCURACY));
    }

    @Test
    void aTubeThatLeansLengthwiseLiesSquareToItsAim() {
        Mount leaning = new Mount(new Vec(0, 0, 1), new Vec(0.3, 0, -1), Optional.of(new Vec(1, 0, 0)));
        assertThat(leaning.along().orElseThrow().dot(leaning.aim())).isCloseTo(0, within(1e-15));
    }

    @Test
    void aLampDoesNotPointAlongItsLength() {
        assertThatThrownBy(() -> new Mount(new Vec(0, 0, 1), RigExamples.DOWN, Optional.of(new Vec(0, 0, 1))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPointInsideFurnitureIsNotAskedFor() {
        RigScene scene = RigScene.of(furnished(SPOT, new Post(new Vec(0.6, 0.3, 0), 0.4, 0.1)));
        assertThat(scene.receiver(point(new Position(0.6, 0.3, 0.2), dapple.enclosure.Facing.LEVEL)))
                .isEmpty();
    }

    @Test
    void aPointOnALampIsNotAskedFor() {
        assertThat(RigScene.of(SPOT).receiver(point(new Position(0.6, 0.3, 0.9), dapple.enclosure.Facing.LEVEL)))
                .isEmpty();
    }

    @Test
    void aPointIsLookedAtAsItsSensorIsHeld() {
        Position position = new Position(0.6, 0.3, 0.2);
        RigScene scene = RigScene.of(SPOT);
        assertThat(scene.receiver(point(position, dapple.enclosure.Facing.LEVEL))
                        .map(Receiver::facing))
                .contains(new Facing.Direction(Vec.UP));
        assertThat(scene.receiver(point(position, dapple.enclosure.Facing.STRONGEST))
                        .map(Receiver::facing))
                .contains(new Facing.Maximum());
    }

    @Test
    void animalsRestOnTheFloorAndOnTops() {
        RigScene scene = RigScene.of(furnished(SPOT, new Block(new Vec(0.1, 0.1, 0.3), new Vec(0.5, 0.3, 0.4), 0)));
        assertThat(scene.restingSurfaces(SIZE))
                .extracting(surface -> surface.point().z())
                .containsExactly(0.0, 0.4);
    }

    @Test
    void theRestingPlaceOnATurnedBoxLiesOnIt() {
        Block block = new Block(new Vec(0.1, 0.1, 0.3), new Vec(0.5, 0.3, 0.4), 30);
        RestingSurface top =
                RigScene.of(furnished(SPOT, block)).restingSurfaces(SIZE).get(1);
        Vec corner = new Vec(top.within().highX() - 1e-6, top.within().highY() - 1e-6, 0.35);
        assertThat(block.solid().holds(corner)).isTrue();
    }

    @Test
    void aBranchHasNoLevelTop() {
        RigScene scene = RigScene.of(furnished(SPOT, new Branch(new Vec(0, 0, 0.3), new Vec(1, 0, 0.5), 0.02)));
        assertThat(scene.restingSurfaces(SIZE)).hasSize(1);
    }

    private static PointFacts point(Position position, dapple.enclosure.Facing facing) {
        return new PointFacts(
                1,
                1,
                "P1",
                "a place",
                PointRole.BASKING,
                facing,
                Optional.of(position),
                List.of(Quantity.UV_INDEX),
                Set.of());
    }

    private static double uvi(RigScene scene, Vec place) {
        return Field.of(scene.scene())
                .at(new Receiver(place, new Facing.Direction(Vec.UP)))
                .values()
                .getOrDefault(Quantity.UV_INDEX, Double.NaN);
    }
}
