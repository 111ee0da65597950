package dapple.light.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dapple.light.cover.Filter;
import dapple.light.field.Scene;
import dapple.light.geometry.Box;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Beam;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.source.Source;
import dapple.light.survey.FoundZones.ForBody;
import dapple.light.survey.FoundZones.OnSurface;
import dapple.light.survey.FoundZones.Patch;
import dapple.light.zone.Body;
import dapple.light.zone.Lattice;
import dapple.light.zone.RestingSurface;
import dapple.light.zone.Zone;
import dapple.light.zone.ZoneTarget;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** A narrow spot 0.5 m over the middle of a floor of 0.8 by 0.4 m; it gives 4 on the floor straight below. */
class ZoneSurveyTest {
    private static final Crew ONE = Crew.ofOne(() -> {});
    private static final double STEP = 0.05;

    /** The field is asked for 0.1 %. */
    private static final double ACCURACY = 0.002;

    private static final Lattice LATTICE = new Lattice(new Vec(0, 0, 0), STEP, 17, 9, 9);
    private static final ZoneTarget TARGET = new ZoneTarget(new Interval(2, 5), 0.3, 8);
    private static final Needs CLIMBER = Needs.of(Quantity.UV_INDEX, TARGET);

    private static final RestingSurface FLOOR =
            new RestingSurface(new Vec(0, 0, 0), Vec.UP, Filter.Rectangle.between(0, 0, 0.8, 0.4));

    private static Lamp spot(String id) {
        Output uv = new Output.Reading(Quantity.UV_INDEX, 4, new Vec(0.4, 0.2, 0), Vec.UP, 1);
        Output heat = new Output.Reading(Quantity.IR_A, 200, new Vec(0.4, 0.2, 0), Vec.UP, 1);
        return new Lamp(
                id,
                new Vec(0.4, 0.2, 0.5),
                new Vec(0, 0, -1),
                new Source.Spot(Beam.Power.ofBeamAngle(30)),
                List.of(uv, heat));
    }

    private static Scene scene(Box... solids) {
        return new Scene(0.001, List.of(spot("spot")), List.of(), List.of(solids));
    }

    private static FoundZones found(Needs needs) {
        return ZoneSurvey.of(scene(), needs, LATTICE, ONE);
    }

    private static Patch patch(Needs needs) {
        return found(needs).onSurface().flatMap(OnSurface::patch).orElseThrow();
    }

    /** By the inverse-square law: the lattice ends 0.1 m below the spot, 4 · (0.5/0.1)² = 100. */
    @Test
    void aClimberComesAsNearAsTheLatticeGoes() {
        FoundZones.Brightest brightest = found(CLIMBER).brightest().orElseThrow();
        assertThat(brightest.place().minus(new Vec(0.4, 0.2, 0.4)).length()).isLessThan(1e-9);
        assertThat(brightest.amount()).isCloseTo(100, within(100 * ACCURACY));
    }

    /** Likewise 4 · (0.5/0.4)² = 6.25 at a reach of 0.1 m. */
    @Test
    void aGroundDwellerComesAsNearAsItReaches() {
        FoundZones found = found(CLIMBER.reaching(0.1));
        assertThat(found.brightest().orElseThrow().amount()).isCloseTo(6.25, within(6.25 * ACCURACY));
        assertThat(found.reachable()).isEqualTo(17 * 9 * 3);
    }

    @Test
    void sharesAreThoseOfTheFactorOne() {
        FoundZones found = found(CLIMBER);
        Map<Zone, Interval> exact = found.shares(new Interval(1, 1));
        found.shares().forEach((zone, share) -> assertThat(exact).containsEntry(zone, new Interval(share, share)));
    }

    @Test
    void moreLightMayOnlyTakeFromTheShade() {
        FoundZones found = found(CLIMBER);
        double shade = found.shares().getOrDefault(Zone.SHADE, -1.0);
        Interval within = found.shares(new Interval(1, 1.5)).getOrDefault(Zone.SHADE, new Interval(2, 2));
        assertThat(within.high()).isEqualTo(shade);
        assertThat(within.low()).isLessThan(shade);
    }

    @Test
    void theGradientRunsFromTheSpotToTheDarkCorners() {
        assertThat(found(CLIMBER).gradientPresent()).isTrue();
        assertThat(found(Needs.of(Quantity.UV_INDEX, new ZoneTarget(new Interval(2, 5), 0, 8)))
                        .gradientPresent())
                .isFalse();
    }

    @Test
    void withoutASurfaceThereIsNoPatch() {
        assertThat(found(CLIMBER).onSurface()).isEmpty();
    }

    @Test
    void aPatchForNobodySaysNothingOfFitting() {
        Patch patch = patch(CLIMBER.restingOn(List.of(FLOOR), Optional.empty()));
        assertThat(patch.body()).isEmpty();
        assertThat(patch.found().variation()).isEmpty();
        assertThat(patch.found().middle().minus(new Vec(0.4, 0.2, 0)).length()).isLessThan(STEP);
    }

    /** Half its intensity is reached at 15°, so 2 is reached within less than 2 · 0.5 m · tan 15°, 0.27 m across. */
    @Test
    void aSmallBodyFitsThePatchAndALargeOneDoesNot() {
        Body small = new Body(0.05, Body.USUAL_EVENNESS);
        Body large = new Body(0.35, Body.USUAL_EVENNESS);
        assertThat(patch(CLIMBER.restingOn(List.of(FLOOR), Optional.of(small))).body())
                .hasValue(new ForBody(true, true));
        assertThat(patch(CLIMBER.restingOn(List.of(FLOOR), Optional.of(large)))
                        .body()
                        .map(ForBody::fits))
                .hasValue(false);
    }

    @Test
    void coincidenceIsTheShareInWhichTheOtherQuantityIsInItsTargetToo() {
        Needs both = new Needs(
                Quantity.UV_INDEX,
                TARGET,
                Optional.empty(),
                List.of(FLOOR),
                Optional.empty(),
                Map.of(Quantity.IR_A, new Interval(50, 1000)),
                Optional.empty());
        assertThat(patch(both).coincidence()).hasValue(1.0);
    }

    /** Two like spots in one place light the same patch, each alone. */
    @Test
    void lampsThatLightOnePlaceOverlapWholly() {
        Needs needs = new Needs(
                Quantity.UV_INDEX,
                TARGET,
                Optional.empty(),
                List.of(FLOOR),
                Optional.empty(),
                Map.of(),
                Optional.of(0.1));
        Scene twice = new Scene(0.001, List.of(spot("one"), spot("other")), List.of(), List.of());
        assertThat(ZoneSurvey.of(twice, needs, LATTICE, ONE).onSurface().flatMap(OnSurface::overlaps))
                .hasValue(List.of(new FoundZones.Overlap("one", "other", 1, true)));
    }

    @Test
    void aKnownFieldIsNotMeasuredAgain() {
        double[] amounts = new double[LATTICE.size()];
        amounts[7] = 3;
        FoundZones found = ZoneSurvey.of(scene(), CLIMBER, new ZoneSurvey.Known(LATTICE, index -> amounts[index]), ONE);
        assertThat(found.brightest().orElseThrow().place()).isEqualTo(LATTICE.place(7));
    }

    @Test
    void whatIsInsideASolidIsNotReachable() {
        Box block = Box.of(new Vec(0.02, 0.02, 0), new Vec(0.78, 0.38, 0.12), 0);
        assertThat(ZoneSurvey.of(scene(block), CLIMBER, LATTICE, ONE).reachable())
                .isLessThan(found(CLIMBER).reachable());
    }

    /** Two hands that take the numbers backwards and in turns. */
    @Test
    void whoDoesTheWorkChangesNothing() {
        FoundZones backwards = ZoneSurvey.of(scene(), CLIMBER, LATTICE, new Crew() {
            @Override
            public <T> void each(int count, Supplier<T> tools, Work<T> work) {
                List<T> hands = List.of(tools.get(), tools.get());
                for (int index = count - 1; index >= 0; index--) {
                    work.at(hands.get(index % 2), index);
                }
            }

            @Override
            public <T> T alone(Supplier<T> work) {
                return work.get();
            }
        });
        assertThat(backwards.shares()).isEqualTo(found(CLIMBER).shares());
        assertThat(backwards.brightest()).isEqualTo(found(CLIMBER).brightest());
    }

    @Test
    void oneHandStopsAtItsDeadline() {
        AtomicInteger asked = new AtomicInteger();
        Crew hasty = Crew.ofOne(() -> {
            if (asked.incrementAndGet() > 100) {
                throw new IllegalStateException("over");
            }
        });
        assertThatThrownBy(() -> ZoneSurvey.of(scene(), CLIMBER, LATTICE, hasty))
                .hasMessage("over");
        assertThat(asked).hasValue(101);
    }
}
