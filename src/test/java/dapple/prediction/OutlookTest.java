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
import dapple.animal.BodyLengthFacts;
import dapple.animal.Occupant;
import dapple.animal.Pigment;
import dapple.animal.Reach;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Facing;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.enclosure.Position;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.survey.FoundZones;
import dapple.light.zone.Zone;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.Rig;
import dapple.rig.RigExamples;
import dapple.rig.RigScene;
import dapple.site.SourceMark;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import dapple.target.Target;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A spot 0.9 m above the middle of the floor, which gives a UV index of 4 at 0.3 m. */
class OutlookTest {
    private static final Rig SPOT = rig(fitting(spot("L1"), Optional.of(above(0.6, 0.3, 0.9))));
    private static final InnerSize SIZE = new InnerSize(1.2, 0.6, 0.8);
    private static final PointFacts BASKING = point("P1", PointRole.BASKING, 0.6);

    private final Outlook outlook = new Outlook();

    /** The inverse-square law: 0.3 m below the lamp there is four times what there is 0.6 m below it. */
    @Test
    void predictsByTheInverseSquareLaw() {
        PointFacts lower = point("P2", PointRole.GRADIENT, 0.3);
        LightInside light = outlook.of(scene(SPOT, Optional.of(SIZE), List.of(BASKING, lower), 0.2));
        assertThat(light.at(BASKING, Quantity.UV_INDEX).orElseThrow().amount()).isCloseTo(4, within(0.02));
        assertThat(light.at(lower, Quantity.UV_INDEX).orElseThrow().amount()).isCloseTo(1, within(0.005));
    }

    @Test
    void theSharesOfTheZonesAreAllThereIs() {
        double sum = zones(SPOT).found().shares().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        assertThat(sum).isCloseTo(1, within(1e-9));
    }

    @Test
    void eachShareLiesInItsInterval() {
        LightInside.Zones zones = zones(SPOT);
        assertThat(zones.within()).hasSameSizeAs(Zone.values());
        zones.within()
                .forEach((zone, interval) -> assertThat(
                                interval.contains(zones.found().shares().getOrDefault(zone, -1.0)))
                        .isTrue());
    }

    @Test
    void aWayToShadeNeedsShade() {
        assertThat(zones(SPOT).found().gradientPresent()).isTrue();
    }

    @Test
    void withoutASizeThereAreNeitherPlanesNorZones() {
        LightInside light = outlook.of(scene(SPOT, Optional.empty()));
        assertThat(light.planes()).isEmpty();
        assertThat(light.zones()).isEmpty();
        assertThat(light.at(BASKING, Quantity.UV_INDEX)).isPresent();
    }

    @Test
    void withoutLampsNothingIsPredicted() {
        LightInside light = outlook.of(scene(Rig.empty(1), Optional.of(SIZE)));
        assertThat(light.planes()).isEmpty();
        assertThat(light.zones()).isEmpty();
        assertThat(light.at(BASKING, Quantity.UV_INDEX)).isEmpty();
    }

    @Test
    void underACoverOfUnknownHeightNothingIsPredicted() {
        LightInside light = outlook.of(scene(covered(SPOT, RigExamples.mesh(Optional.empty())), Optional.of(SIZE)));
        assertThat(light.planes()).isEmpty();
    }

    @Test
    void theSameIsComputedOnce() {
        LightInside first = outlook.of(scene(SPOT, Optional.of(SIZE)));
        assertThat(outlook.of(scene(SPOT, Optional.of(SIZE)))).isSameAs(first);
    }

    @Test
    void furnitureMakesItAnother() {
        LightInside first = outlook.of(scene(SPOT, Optional.of(SIZE)));
        Rig slab = furnished(SPOT, new Block(new Vec(0.4, 0.1, 0), new Vec(0.8, 0.5, 0.1), 0));
        assertThat(outlook.of(scene(slab, Optional.of(SIZE)))).isNotSameAs(first);
    }

    @Test
    void aLongerBodyMakesItAnother() {
        LightInside first = outlook.of(scene(SPOT, Optional.of(SIZE)));
        assertThat(outlook.of(scene(SPOT, Optional.of(SIZE), List.of(BASKING), 0.5)))
                .isNotSameAs(first);
    }

    /** A disc is where the light is; it can be no larger than the patch. */
    @Test
    void theLargestDiscFitsThePatch() {
        FoundZones.Patch patch = zones(SPOT)
                .found()
                .onSurface()
                .flatMap(FoundZones.OnSurface::patch)
                .orElseThrow();
        double radius = patch.found().largestDiscMetres() / 2;
        assertThat(Math.PI * radius * radius).isLessThanOrEqualTo(patch.found().areaSquareMetres() * 1.1);
    }

    @Test
    void crossedLimitsStillMakeZones() {
        SpeciesNeed need = new SpeciesNeed(1, "Species", Optional.of(target(1, 5, 2, 3)), Optional.empty());
        assertThat(need.zones().orElseThrow().basking()).isEqualTo(new Interval(1, 3));
        assertThat(need.zones().orElseThrow().shadeHigh()).isEqualTo(1);
    }

    @Test
    void aRangeWithoutLowerEndBeginsWhereShadeEnds() {
        SpeciesNeed need = new SpeciesNeed(1, "Species", Optional.of(target(0, 0.9, 0.1, 1.4)), Optional.empty());
        assertThat(need.zones().orElseThrow().basking()).isEqualTo(new Interval(0.1, 0.9));
        assertThat(need.zones().orElseThrow().of(0.05)).isEqualTo(Zone.SHADE);
    }

    private LightInside.Zones zones(Rig rig) {
        return outlook.of(scene(rig, Optional.of(SIZE))).zones().orElseThrow();
    }

    private static EnclosureScene scene(Rig rig, Optional<InnerSize> size) {
        return scene(rig, size, List.of(BASKING), 0.2);
    }

    private static EnclosureScene scene(Rig rig, Optional<InnerSize> size, List<PointFacts> points, double body) {
        SpeciesNeed need = new SpeciesNeed(1, "Species", Optional.of(target(0.4, 1.5, 0.1, 3)), Optional.empty());
        AnimalFacts animal = new AnimalFacts(1, "2026-1", "Basil", 1, AnimalKind.INDIVIDUAL, Pigment.NORMAL);
        BodyLengthFacts length = new BodyLengthFacts(body, LocalDate.of(2026, 5, 4));
        return new EnclosureScene(
                new EnclosureFacts(1, "E1", 1, "Room", size, Optional.empty()),
                RigScene.of(rig),
                points,
                List.of(new Occupant(animal, "Species", Reach.EVERYWHERE, Optional.of(length))),
                List.of(need),
                Optional.of(need));
    }

    private static Target target(double low, double high, double shade, double ceiling) {
        return new Target(
                1,
                1,
                1,
                new UvZone(2, LightMethod.SUNBEAM),
                RigExamples.SOME_DAY,
                RigExamples.SOME_DAY,
                List.of(
                        limit(LimitPlace.BASKING, new Band(low, high)),
                        limit(LimitPlace.SHADE, Band.atMost(shade)),
                        limit(LimitPlace.CEILING, Band.atMost(ceiling))));
    }

    private static SourcedLimit limit(LimitPlace place, Band band) {
        return new SourcedLimit(Quantity.UV_INDEX, place, band, SourceMark.COMMON_PRACTICE, "invented for a test");
    }

    private static PointFacts point(String code, PointRole role, double z) {
        return new PointFacts(
                1,
                1,
                code,
                "a place",
                role,
                Facing.STRONGEST,
                Optional.of(new Position(0.6, 0.3, z)),
                List.of(Quantity.UV_INDEX),
                Set.of());
    }
}
