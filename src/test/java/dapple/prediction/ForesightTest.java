package dapple.prediction;

import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.covered;
import static dapple.rig.RigExamples.fitting;
import static dapple.rig.RigExamples.furnished;
import static dapple.rig.RigExamples.rig;
import static dapple.rig.RigExamples.spot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKind;
import dapple.animal.Pigment;
import dapple.enclosure.Facing;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.lamp.LampClass;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.prediction.Foreseen.Excess;
import dapple.prediction.Foreseen.Row;
import dapple.prediction.PointLimits.OfSpecies;
import dapple.rig.FurnitureShape;
import dapple.rig.LeftOut;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A spot that gives a UV index of 4 at 0.3 m, straight above: 1 at 0.6 m, by the inverse-square law. */
class ForesightTest {
    private static final Rig HIGH = rig(fitting(spot("L1"), Optional.of(above(0.6, 0.3, 0.9))));
    private static final Rig LOW = rig(fitting(spot("L1"), Optional.of(above(0.6, 0.3, 0.6))));
    private static final PointFacts BASKING = point("P1", PointRole.BASKING, 0.3);
    private static final PointFacts NEAREST = point("P4", PointRole.NEAREST_REACHABLE, 0.35);
    private static final PointFacts KEEPER = point("P5", PointRole.KEEPER, 0.3);
    private static final PointFacts UNPLACED = new PointFacts(
            9,
            1,
            "P9",
            "a place",
            PointRole.SHADE,
            Facing.LEVEL,
            Optional.empty(),
            List.of(Quantity.UV_INDEX),
            Set.of());

    private static final AnimalFacts BASIL =
            new AnimalFacts(1, "2026-1", "Basil", 1, AnimalKind.INDIVIDUAL, Pigment.NORMAL);

    /** Of the scene. */
    private static final double ACCURACY = 0.01;

    @Test
    void halfTheDistanceGivesFourTimesAsMuch() {
        Row row = uvi(Foresight.compare(HIGH, LOW, List.of(BASKING), PointLimits.none()));
        assertThat(row.now().orElseThrow().amount()).isCloseTo(1, within(ACCURACY));
        assertThat(row.then().orElseThrow().amount()).isCloseTo(4, within(4 * ACCURACY));
        assertThat(row.ratio().orElseThrow()).isCloseTo(4, within(4 * ACCURACY));
    }

    /** Open area of a square weave, (1 − 0.25/2.5)². */
    @Test
    void aMeshTakesItsWires() {
        Rig meshed = covered(HIGH, RigExamples.mesh(Optional.of(0.8)));
        Row row = uvi(Foresight.compare(HIGH, meshed, List.of(BASKING), PointLimits.none()));
        assertThat(row.ratio().orElseThrow()).isCloseTo(0.81, within(ACCURACY));
    }

    @Test
    void everyQuantityThatALampGivesHasItsRow() {
        assertThat(Foresight.compare(HIGH, LOW, List.of(BASKING), PointLimits.none())
                        .rows())
                .extracting(Row::quantity)
                .containsExactly(Quantity.UV_INDEX, Quantity.ILLUMINANCE);
    }

    @Test
    void whatIsNotPredictedAfterwardsIsUnknownNotNothing() {
        Rig glazed = covered(HIGH, RigExamples.sheet(0.5));
        Foreseen foreseen = Foresight.compare(HIGH, glazed, List.of(BASKING), PointLimits.none());
        Row lux = foreseen.rows().get(1);
        assertThat(lux.now()).isPresent();
        assertThat(lux.then()).isEmpty();
        assertThat(lux.ratio()).isEmpty();
        assertThat(foreseen.leftOut()).extracting(LeftOut::name).containsExactly("front glass");
    }

    @Test
    void fromTheDarkThereIsNoRatio() {
        Rig shaded = furnished(HIGH, new FurnitureShape.Block(new Vec(0.4, 0.1, 0.5), new Vec(0.8, 0.5, 0.52), 0));
        Row row = uvi(Foresight.compare(shaded, HIGH, List.of(BASKING), PointLimits.none()));
        assertThat(row.now().orElseThrow().amount()).isZero();
        assertThat(row.ratio()).isEmpty();
    }

    @Test
    void aPointWithoutPositionIsNamed() {
        Foreseen foreseen = Foresight.compare(HIGH, LOW, List.of(BASKING, UNPLACED), PointLimits.none());
        assertThat(foreseen.unplaced()).containsExactly(UNPLACED);
    }

    @Test
    void withoutLampsNothingIsForeseen() {
        Foreseen foreseen = Foresight.compare(Rig.empty(1), Rig.empty(1), List.of(BASKING), PointLimits.none());
        assertThat(foreseen.isEmpty()).isTrue();
    }

    @Test
    void theHighestAtTheNearestReachablePointIsTold() {
        Foreseen foreseen = Foresight.compare(HIGH, LOW, List.of(BASKING, NEAREST), PointLimits.none());
        // 4 · (0.3 / 0.25)² = 5.76
        assertThat(foreseen.highest().get(0).point()).isEqualTo(NEAREST);
        assertThat(foreseen.highest().get(0).predicted().amount()).isCloseTo(5.76, within(6 * ACCURACY));
    }

    @Test
    void whatReachesTheCeilingIsTold() {
        Foreseen foreseen = Foresight.compare(HIGH, LOW, List.of(BASKING, NEAREST), ceiling(5.5));
        assertThat(foreseen.excesses())
                .filteredOn(Excess::isSure)
                .extracting(excess -> excess.point().code())
                .containsExactly("P4");
    }

    @Test
    void whatMayReachTheCeilingIsTold() {
        Foreseen foreseen = Foresight.compare(HIGH, LOW, List.of(BASKING), ceiling(4.5));
        assertThat(foreseen.excesses()).extracting(Excess::isSure).containsExactly(false);
    }

    @Test
    void whatStaysFarBelowTheCeilingIsNoExcess() {
        assertThat(Foresight.compare(LOW, HIGH, List.of(BASKING, NEAREST), ceiling(5.5))
                        .excesses())
                .isEmpty();
    }

    @Test
    void noAnimalReachesAKeepersPoint() {
        assertThat(Foresight.compare(HIGH, LOW, List.of(KEEPER), ceiling(1)).excesses())
                .isEmpty();
    }

    /** 10 % standard uncertainty of the output is 20 % with a factor of 2; the position adds a little. */
    @Test
    void theIntervalHoldsTheUncertaintyOfTheOutput() {
        Predicted then = uvi(Foresight.compare(HIGH, HIGH, List.of(BASKING), PointLimits.none()))
                .then()
                .orElseThrow();
        assertThat(then.interval().low()).isBetween(0.75, 0.80);
        assertThat(then.interval().high()).isBetween(1.20, 1.25);
    }

    @Test
    void besideALampOfUnknownOutputTheAmountIsALeast() {
        Rig beside = rig(
                fitting(spot("L1"), Optional.of(above(0.6, 0.3, 0.9))),
                fitting(RigExamples.lamp("L2", LampClass.TUBE_T5, Optional.empty()), Optional.empty()));
        Row row = uvi(Foresight.compare(HIGH, beside, List.of(BASKING), PointLimits.none()));
        assertThat(row.now().orElseThrow().isWhole()).isTrue();
        assertThat(row.then().orElseThrow().isWhole()).isFalse();
    }

    private static Row uvi(Foreseen foreseen) {
        return foreseen.rows().get(0);
    }

    private static PointLimits ceiling(double ceiling) {
        Limits limits = new Limits(new Band(0.5, 1), 0.1, ceiling);
        return new PointLimits(List.of(new OfSpecies("Pogona vitticeps", Quantity.UV_INDEX, limits, List.of(BASIL))));
    }

    private static PointFacts point(String code, PointRole role, double z) {
        Position position = new Position(0.6, 0.3, z);
        return new PointFacts(
                code.hashCode(),
                1,
                code,
                "a place",
                role,
                Facing.STRONGEST,
                Optional.of(position),
                List.of(Quantity.UV_INDEX),
                Set.of());
    }
}
