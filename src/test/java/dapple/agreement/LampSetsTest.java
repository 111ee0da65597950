package dapple.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dapple.lamp.LampClass;
import dapple.light.metrology.LampSet;
import dapple.light.quantity.Quantity;
import dapple.rig.DailyTimer;
import dapple.rig.FittedLamp;
import dapple.rig.RigChangeFacts;
import dapple.rig.RigChangeKind;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LampSetsTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Instant FITTED = Instant.parse("2026-03-02T09:00:00Z");
    private static final Instant CHANGED = Instant.parse("2026-06-01T09:00:00Z");
    private static final Instant NOW = Instant.parse("2026-11-01T09:00:00Z");
    private static final long HOUSE = 3;

    /** Twice a year a local day of 11 lit hours has the same 11 hours: 365 days. */
    private static final double HOURS = 365 * 11;

    private static final double HALF_A_DAY = 12;

    @ParameterizedTest
    @EnumSource(names = {"LAMP_SWAPPED", "COVER_CHANGED", "MOVED", "FURNITURE_CHANGED", "GEAR_CHANGED", "REBUILT"})
    void aChangeOfTheLightMakesAnotherSet(RigChangeKind kind) {
        LampSets sets =
                sets(List.of(change(1, FITTED, RigChangeKind.FIRST_SET_UP), change(2, CHANGED, kind)), List.of());
        assertThat(key(sets, CHANGED)).isNotEqualTo(key(sets, CHANGED.minusSeconds(1)));
    }

    @Test
    void aChangeOfATimerMakesNone() {
        LampSets sets = sets(
                List.of(change(1, FITTED, RigChangeKind.FIRST_SET_UP), change(2, CHANGED, RigChangeKind.TIMER_CHANGED)),
                List.of());
        assertThat(key(sets, CHANGED)).isEqualTo(key(sets, CHANGED.minusSeconds(1)));
    }

    @Test
    void anotherEnclosureIsAnotherSet() {
        LampSets sets = sets(List.of(), List.of());
        assertThat(sets.at(HOUSE + 1, Quantity.UV_INDEX, NOW).key()).isNotEqualTo(key(sets, NOW));
    }

    @Test
    void lampsDeclineAsIsUsualOfTheirClassByTheirTimer() {
        LampSet set =
                sets(List.of(), List.of(lamp(LampClass.COMPACT_FLUORESCENT))).at(HOUSE, Quantity.UV_INDEX, CHANGED);
        assertThat(set.decline().medianPerHour()).isEqualTo(LampClass.COMPACT_FLUORESCENT.usualLossPerHour());
        assertThat(set.decline().hoursPerYear()).isCloseTo(HOURS, within(HALF_A_DAY));
    }

    /** A heat lamp gives no ultraviolet: the tube alone declines. */
    @Test
    void onlyLampsThatGiveOfTheQuantityCount() {
        LampSet set = sets(List.of(), List.of(lamp(LampClass.TUBE_T5), lamp(LampClass.INFRARED_EMITTER)))
                .at(HOUSE, Quantity.UV_INDEX, CHANGED);
        assertThat(set.decline().medianPerHour()).isEqualTo(LampClass.TUBE_T5.usualLossPerHour());
    }

    @Test
    void lampsThatAreNotOnRecordMayDeclineInManyWays() {
        LampSet set = sets(List.of(), List.of()).at(HOUSE, Quantity.UV_INDEX, CHANGED);
        assertThat(set.decline()).isEqualTo(LampSets.UNKNOWN);
    }

    private static String key(LampSets sets, Instant at) {
        return sets.at(HOUSE, Quantity.UV_INDEX, at).key();
    }

    private static LampSets sets(List<RigChangeFacts> changes, List<FittedLamp> lamps) {
        return new LampSets(changes, lamps, LONDON, NOW);
    }

    private static RigChangeFacts change(long id, Instant at, RigChangeKind kind) {
        return new RigChangeFacts(id, HOUSE, at, kind, "", at, 1);
    }

    private static FittedLamp lamp(LampClass lampClass) {
        DailyTimer timer = new DailyTimer(LocalTime.of(8, 0), LocalTime.of(19, 0));
        return new FittedLamp(
                HOUSE, "L1", lampClass, "a place", Optional.of(timer), FITTED, Optional.empty(), 1, Optional.empty());
    }
}
