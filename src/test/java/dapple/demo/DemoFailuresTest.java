package dapple.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.demo.DemoFailures.Failure;
import dapple.demo.DemoFailures.Kind;
import dapple.light.quantity.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DemoFailuresTest {
    @ParameterizedTest
    @EnumSource
    void theTableHasOneOfEachKind(Kind kind) {
        assertThat(DemoFailures.read().of(kind)).isNotEmpty();
    }

    @Test
    void lightIsChangedOnlyInItsWeeks() {
        DemoFailures failures = of(Kind.GLASS_CLOSED, "");
        assertThat(List.of(9, 10, 12, 13))
                .extracting(week -> failures.times("E17", week, Quantity.UV_INDEX))
                .containsExactly(1.0, 0.5, 0.5, 1.0);
    }

    @Test
    void luxChangesByItsOwnFactor() {
        assertThat(of(Kind.GLASS_CLOSED, "").times("E17", 10, Quantity.ILLUMINANCE))
                .isEqualTo(0.9);
    }

    @Test
    void whoHoldsTheMeterElsewhereScattersButChangesNoLight() {
        DemoFailures failures = of(Kind.OTHER_HEIGHT, "");
        assertThat(failures.scatter("E17", 10)).isEqualTo(0.5);
        assertThat(failures.times("E17", 10, Quantity.UV_INDEX)).isEqualTo(1);
    }

    @Test
    void whatIsEnteredElsewhereIsNotReadAtHome() {
        DemoFailures failures = of(Kind.WRONG_ENCLOSURE, "E18");
        assertThat(failures.isRead("E17", 10)).isTrue();
        assertThat(failures.isRead("E18", 10)).isFalse();
        assertThat(failures.neighbour("E17", 10)).hasValue("E18");
    }

    @Test
    void twoMetersTakeTurns() {
        DemoFailures failures = of(Kind.OTHER_METER, "M2");
        assertThat(List.of(10, 11, 12))
                .extracting(week -> failures.otherMeter("E17", week).isPresent())
                .containsExactly(true, false, true);
    }

    private static DemoFailures of(Kind kind, String other) {
        return new DemoFailures(List.of(new Failure("E17", 10, 12, kind, 0.5, 0.9, other, "")));
    }
}
