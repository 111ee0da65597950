package dapple.prediction;

import static dapple.prediction.SceneExamples.BASKING;
import static dapple.prediction.SceneExamples.limit;
import static dapple.prediction.SceneExamples.need;
import static dapple.prediction.SceneExamples.point;
import static dapple.prediction.SceneExamples.scene;
import static dapple.rig.RigExamples.above;
import static dapple.rig.RigExamples.fitting;
import static dapple.rig.RigExamples.rig;
import static dapple.rig.RigExamples.spot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones;
import dapple.light.zone.BaskingPatch;
import dapple.light.zone.Zone;
import dapple.light.zone.ZoneTarget;
import dapple.rig.Rig;
import dapple.target.LimitPlace;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** A spot 0.9 m above the middle of the floor, which gives a UV index of 4 at 0.3 m. */
class LiveLightTest {
    private static final Rig SPOT = rig(fitting(spot("L1"), Optional.of(above(0.6, 0.3, 0.9))));
    private static final Rig MOVED = rig(fitting(spot("L1"), Optional.of(above(0.5, 0.3, 0.9))));

    private static final Hands HANDS = new Hands();

    private final LiveLight live = new LiveLight(HANDS);

    @AfterAll
    static void close() {
        HANDS.close();
    }

    private LightInside fine(Rig rig) {
        return live.of(scene(rig, BASKING), Quantity.UV_INDEX, false);
    }

    private LightInside rough(Rig rig) {
        return live.of(scene(rig, BASKING), Quantity.UV_INDEX, true);
    }

    private static Map<Zone, Double> shares(LightInside light) {
        return light.zones().orElseThrow().found().shares();
    }

    @Test
    void isTheLightOfTheEnclosuresOwnPage() {
        LightInside page = new Outlook().of(scene(SPOT, BASKING));
        assertThat(shares(fine(SPOT))).isEqualTo(shares(page));
        assertThat(fine(SPOT).at(BASKING, Quantity.UV_INDEX)).isEqualTo(page.at(BASKING, Quantity.UV_INDEX));
    }

    /** Whoever drags a lamp over the ceiling is told so at once. */
    @Test
    void roughSharesAndTheBrightestPlaceAreTheSame() {
        assertThat(shares(rough(SPOT))).isEqualTo(shares(fine(SPOT)));
        assertThat(rough(SPOT).zones().orElseThrow().found().brightest())
                .isEqualTo(fine(SPOT).zones().orElseThrow().found().brightest());
    }

    /** A rough disc surely lies in the patch: on either side it may lack a step across a cell's corners. */
    @Test
    void roughFindsNearlyTheSamePatch() {
        BaskingPatch found = patch(fine(SPOT));
        BaskingPatch roughly = patch(rough(SPOT));
        assertThat(roughly.stepMetres()).isGreaterThan(found.stepMetres());
        assertThat(roughly.largestDiscMetres())
                .isBetween(
                        found.largestDiscMetres() - 2 * Math.sqrt(2) * roughly.stepMetres(),
                        found.largestDiscMetres() + 2 * found.stepMetres());
        assertThat(roughly.middle().minus(found.middle()).length()).isLessThan(2 * roughly.stepMetres());
    }

    private static BaskingPatch patch(LightInside light) {
        return light.zones()
                .flatMap(zones -> zones.found().onSurface())
                .flatMap(FoundZones.OnSurface::patch)
                .orElseThrow()
                .found();
    }

    @Test
    void aLampThatMovesChangesTheZones() {
        assertThat(shares(rough(MOVED))).isNotEqualTo(shares(rough(SPOT)));
    }

    @Test
    void aPointThatMovesLeavesTheZonesAsTheyWere() {
        LightInside first = live.of(scene(SPOT, BASKING), Quantity.UV_INDEX, false);
        LightInside second = live.of(scene(SPOT, BASKING, point("P2", 0.3, 0.1)), Quantity.UV_INDEX, false);
        assertThat(second.planes()).isSameAs(first.planes());
        assertThat(second.zones().orElseThrow().found())
                .isSameAs(first.zones().orElseThrow().found());
        assertThat(second.at(point("P2", 0.3, 0.1), Quantity.UV_INDEX)).isPresent();
    }

    @Test
    void whatNoLampGivesIsNotDrawn() {
        assertThat(live.of(scene(SPOT, BASKING), Quantity.IR_B, false).planes()).isEmpty();
    }

    @Test
    void zonesOfAnotherQuantityFollowItsOwnLimits() {
        ZoneTarget target = need(limit(Quantity.ILLUMINANCE, LimitPlace.BASKING, new Band(20_000, 60_000)))
                .zones(Quantity.ILLUMINANCE)
                .orElseThrow();
        assertThat(target.of(10_000)).isEqualTo(Zone.GRADIENT);
        assertThat(target.of(20_000)).isEqualTo(Zone.BASKING);
        assertThat(target.of(60_001)).isEqualTo(Zone.ABOVE_TARGET);
        assertThat(target.of(0)).isEqualTo(Zone.SHADE);
    }

    @Test
    void withoutABaskingRangeAnotherQuantityHasNoZones() {
        assertThat(need(limit(Quantity.ILLUMINANCE, LimitPlace.SHADE, Band.atMost(500)))
                        .zones(Quantity.ILLUMINANCE))
                .isEmpty();
        assertThat(need().zones(Quantity.IR_A)).isEmpty();
    }

    @Test
    void everyNumberIsWorkedAtOnce() {
        int[] times = new int[1000];
        HANDS.each(times.length, () -> times, (own, index) -> own[index]++);
        assertThat(times).containsOnly(1);
    }

    @Test
    void workThatFailsFailsForWhoAsked() {
        assertThatThrownBy(() -> HANDS.each(1000, () -> 1, (own, index) -> {
                    if (index == 700) {
                        throw new IllegalArgumentException("no such number");
                    }
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no such number");
    }

    @Test
    void nothingToDoIsDoneAtOnce() {
        int[] touched = new int[1];
        HANDS.each(0, () -> touched, (own, index) -> own[0]++);
        assertThat(IntStream.of(touched).sum()).isZero();
    }
}
