package dapple.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.target.Target;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class TargetHeldTest {
    private static final Instant FIRST_APPROVED = Instant.parse("2026-03-10T12:00:00Z");
    private static final Instant SECOND_APPROVED = Instant.parse("2026-03-20T12:00:00Z");
    private static final Period MARCH = new Period(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 31));

    @Test
    void aFirstVersionHeldFromItsApprovalOn() {
        Target first = version(1, FIRST_APPROVED, FIRST_APPROVED);
        assertThat(held(first)).containsExactly(new TargetHeld(first, march(10, 31)));
    }

    @Test
    void aFirstVersionForEarlierReadingsHeldBeforeItsApproval() {
        Target first = version(1, FIRST_APPROVED, Instant.EPOCH);
        Target second = version(2, SECOND_APPROVED, SECOND_APPROVED);
        assertThat(held(second, first))
                .containsExactly(new TargetHeld(first, march(1, 19)), new TargetHeld(second, march(20, 31)));
    }

    private static List<TargetHeld> held(Target... newestFirst) {
        return TargetHeld.in(MARCH, List.of(newestFirst), ZoneOffset.UTC);
    }

    private static Period march(int first, int last) {
        return new Period(LocalDate.of(2026, 3, first), LocalDate.of(2026, 3, last));
    }

    private static Target version(int number, Instant approvedAt, Instant inForceFrom) {
        return new Target(number, 1, number, new UvZone(3, LightMethod.SUNBEAM), approvedAt, inForceFrom, List.of());
    }
}
