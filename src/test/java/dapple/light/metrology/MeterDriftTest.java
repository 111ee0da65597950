package dapple.light.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.light.metrology.MeterFinding.Drifting;
import dapple.light.metrology.MeterFinding.Knocked;
import dapple.light.metrology.MeterFinding.Steady;
import dapple.light.metrology.MeterFinding.Unknown;
import dapple.light.metrology.MeterFinding.Why;
import dapple.light.metrology.SimulatedCollection.Drift;
import dapple.light.metrology.SimulatedCollection.Fault;
import dapple.light.metrology.SimulatedCollection.Knock;
import dapple.light.metrology.SimulatedCollection.Meters;
import dapple.light.metrology.SimulatedCollection.None;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single collections; how often all of this holds is counted in {@link MeterDriftSimulationIT}. */
class MeterDriftTest {
    /** A seed with three meters and 37 enclosures. */
    private static final long SEED = 1003;

    private static final double ROUNDING = 1e-9;

    private static SimulatedCollection collection(Fault fault, Meters onSite) {
        return new SimulatedCollection(SEED, fault, onSite);
    }

    private static MeterDrift drift(SimulatedCollection collection) {
        return MeterDrift.of(collection.readings(), DriftSettings.USUAL);
    }

    private static MeterFinding ofTheFaulty(SimulatedCollection collection) {
        return drift(collection).findings().stream()
                .filter(finding -> finding.meter().equals(collection.faultyMeter()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void saysNothingOfNothing() {
        assertThat(MeterDrift.of(List.of(), DriftSettings.USUAL).findings()).isEmpty();
    }

    @Test
    void soundMetersAreSteady() {
        assertThat(drift(collection(new None(), Meters.TWO_OR_THREE)).findings())
                .allMatch(Steady.class::isInstance);
    }

    @Test
    void aKnockedMeterIsNamed() {
        SimulatedCollection collection = collection(new Knock(-0.2), Meters.TWO_OR_THREE);
        assertThat(ofTheFaulty(collection)).isInstanceOfSatisfying(Knocked.class, knocked -> {
            assertThat(knocked.shift().interval().contains(-0.2)).isTrue();
            assertThat(knocked.doubt().isNone()).isTrue();
            assertThat(knocked.found()).isAfter(collection.knockedAt());
        });
    }

    @Test
    void aDriftingMeterIsNamed() {
        SimulatedCollection collection = collection(new Drift(0.2), Meters.TWO_OR_THREE);
        assertThat(ofTheFaulty(collection))
                .isInstanceOfSatisfying(
                        Drifting.class,
                        drifting -> assertThat(drifting.drift().interval().contains(0.2))
                                .isTrue());
    }

    @Test
    void theOtherMetersStaySteady() {
        SimulatedCollection collection = collection(new Knock(-0.2), Meters.TWO_OR_THREE);
        assertThat(drift(collection).findings())
                .filteredOn(finding -> !finding.meter().equals(collection.faultyMeter()))
                .allMatch(Steady.class::isInstance);
    }

    @Test
    void aSingleMeterMayBeAllLamps() {
        assertThat(ofTheFaulty(collection(new Knock(0.2), Meters.ONE)))
                .isInstanceOfSatisfying(
                        Knocked.class,
                        knocked -> assertThat(knocked.doubt().allLamps()).isTrue());
    }

    @Test
    void aSingleMetersDriftIsUnknown() {
        assertThat(ofTheFaulty(collection(new Drift(0.1), Meters.ONE)))
                .isEqualTo(new Unknown("meter 0", Why.NEEDS_REFERENCE));
    }

    @Test
    void allMetersAtOnceAreNoMeter() {
        SimulatedCollection collection = collection(new None(), Meters.TWO_OR_THREE);
        Instant dimmed = SimulatedCollection.at(300);
        List<Compared> readings = collection.readings().stream()
                .map(reading -> reading.at().isBefore(dimmed) ? reading : moved(reading, -0.2))
                .toList();
        MeterDrift drift = MeterDrift.of(readings, DriftSettings.USUAL);
        assertThat(drift.sharedShifts()).hasSize(1);
        assertThat(drift.sharedShifts().get(0).shift().interval().contains(-0.2))
                .isTrue();
        assertThat(drift.findings()).noneMatch(Knocked.class::isInstance);
    }

    private static Compared moved(Compared reading, double by) {
        return new Compared(
                reading.meter(),
                reading.point(),
                reading.lamps(),
                reading.at(),
                reading.lnAmount() + by,
                reading.lnUncertainty());
    }

    @Test
    void fewWeeksTellNothing() {
        SimulatedCollection collection = collection(new None(), Meters.TWO_OR_THREE);
        List<Compared> firstWeeks = collection.readings().stream()
                .filter(reading -> reading.at().isBefore(SimulatedCollection.at(30)))
                .toList();
        assertThat(MeterDrift.of(firstWeeks, DriftSettings.USUAL).findings())
                .allMatch(finding -> finding instanceof Unknown unknown && unknown.why() == Why.TOO_FEW_READINGS);
    }

    @Test
    void doesNotAskInWhichOrderReadingsCome() {
        SimulatedCollection collection = collection(new Knock(0.1), Meters.TWO_OR_THREE);
        List<Compared> shuffled = new ArrayList<>(collection.readings());
        Collections.shuffle(shuffled, new Random(SEED));
        assertThat(shift(shuffled, collection)).isCloseTo(shift(collection.readings(), collection), within(ROUNDING));
    }

    /** In another unit all amounts are larger by one factor. */
    @Test
    void doesNotAskForTheUnit() {
        SimulatedCollection collection = collection(new Knock(0.1), Meters.TWO_OR_THREE);
        List<Compared> other = collection.readings().stream()
                .map(reading -> moved(reading, Math.log(1000)))
                .toList();
        assertThat(shift(other, collection)).isCloseTo(shift(collection.readings(), collection), within(1e-6));
    }

    private static double shift(List<Compared> readings, SimulatedCollection collection) {
        return MeterDrift.of(readings, DriftSettings.USUAL).findings().stream()
                .filter(finding -> finding.meter().equals(collection.faultyMeter()))
                .map(Knocked.class::cast)
                .mapToDouble(knocked -> knocked.shift().estimate())
                .findFirst()
                .orElseThrow();
    }

    /** Beyond 8 % and 4 standard errors, of at least 8 enclosures (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "0.09, 0.01, 8, true",
        "-0.09, 0.01, 8, true",
        "0.07, 0.01, 8, false",
        "0.09, 0.03, 8, false",
        "0.09, 0.01, 7, false"
    })
    void aWeekIsBeyond(double lnShift, double standardError, int enclosures, boolean beyond) {
        WeekOfMeter week = new WeekOfMeter("a", SimulatedCollection.FIRST, lnShift, standardError, enclosures);
        assertThat(week.isBeyond()).isEqualTo(beyond);
    }
}
