package dapple.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dapple.animal.AnimalFacts;
import dapple.animal.AnimalKind;
import dapple.animal.Pigment;
import dapple.light.judging.Band;
import dapple.light.judging.Judgement;
import dapple.light.judging.Limits;
import dapple.light.judging.MeterUncertainty;
import dapple.light.judging.PointRole;
import dapple.light.judging.State;
import dapple.light.judging.VisitJudging;
import dapple.light.judging.VisitJudging.PointReading;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The limits of UV zone 3, sunbeam method: basking 2.9 to 7.4, published; ceiling 8.0, common practice, no source. */
class OrderedTest {
    private static final Optional<Limits> ZONE_3 = Optional.of(new Limits(new Band(2.9, 7.4), 0.29, 8.0));
    private static final Optional<Limits> ZONE_1 = Optional.of(new Limits(new Band(0.35, 0.7), 0.1, 1.4));

    @Test
    void ownLimitsStandForTheSpecies() {
        Limits own = new Limits(new Band(1, 2), 0.1, 3);
        assertThat(new Ordered.OwnLimits(own).limits(ZONE_3)).isEqualTo(own);
    }

    @Test
    void aCapCutsTheRange() {
        assertThat(new Ordered.Cap(4).limits(ZONE_3)).isEqualTo(new Limits(new Band(2.9, 4), 0.29, 4));
    }

    @Test
    void aCapBelowTheRangeLeavesNoLowerEnd() {
        assertThat(new Ordered.Cap(1.5).limits(ZONE_3)).isEqualTo(new Limits(new Band(0, 1.5), 0.29, 1.5));
    }

    @Test
    void aCapHoldsWithoutATarget() {
        assertThat(new Ordered.Cap(1.5).limits(Optional.empty()).ceiling()).isEqualTo(1.5);
    }

    @ParameterizedTest
    @CsvSource({"0, ON_TARGET", "0.1, BORDERLINE", "0.2, OVER_CEILING", "3, OVER_CEILING"})
    void ultravioletOffAllowsATenthEverywhere(double uvi, State state) {
        MeterUncertainty meter = MeterUncertainty.ofResolution(0.1);
        PointReading reading = new PointReading(1, PointRole.NEAREST_REACHABLE, meter.around(uvi), meter);
        Judgement judgement = VisitJudging.judge(List.of(reading), new Ordered.UvOff().limits(ZONE_3))
                .getOrDefault(1L, Judgement.none());
        assertThat(judgement.state()).contains(state);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aCapIsANumberAboveZero(double ceiling) {
        assertThatThrownBy(() -> new Ordered.Cap(ceiling)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void rangesApartConflict() {
        assertThat(needs(1, ZONE_3).conflictsWith(needs(2, ZONE_1))).isTrue();
    }

    @Test
    void conflictsAreMutual() {
        assertThat(needs(2, ZONE_1).conflictsWith(needs(1, ZONE_3))).isTrue();
    }

    @Test
    void rangesThatTouchDoNotConflict() {
        Optional<Limits> zone2 = Optional.of(new Limits(new Band(0.7, 1.0), 0.1, 3.0));
        assertThat(needs(1, zone2).conflictsWith(needs(2, ZONE_1))).isFalse();
    }

    @Test
    void whoHasNoTargetConflictsWithNobody() {
        assertThat(needs(1, Optional.empty()).conflictsWith(needs(2, ZONE_1))).isFalse();
    }

    @Test
    void ultravioletOffConflictsWithZone3() {
        Needs treated = needs(1, Optional.of(new Ordered.UvOff().limits(ZONE_3)));
        assertThat(NeedsConflict.between(List.of(treated), List.of(treated, needs(2, ZONE_3))))
                .extracting(conflict -> conflict.other().animal().id())
                .containsExactly(2L);
    }

    private static Needs needs(long id, Optional<Limits> limits) {
        AnimalFacts animal = new AnimalFacts(id, "2026-" + id, "Name", 1, AnimalKind.INDIVIDUAL, Pigment.NORMAL);
        return new Needs(animal, limits, false);
    }
}
