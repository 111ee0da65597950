package dapple.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NightTest {
    /** One hour before UTC in winter, two in summer: 03:10 is 02:10Z or 01:10Z. */
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    @ParameterizedTest
    @CsvSource({
        "2026-11-27T02:09:59Z, 2026-11-26T02:10:30Z, , false, it is not ten past three yet",
        "2026-11-27T02:10:00Z, 2026-11-26T02:10:30Z, , true, ten past three",
        "2026-11-27T09:00:00Z, 2026-11-25T02:10:30Z, , true, it was off at night",
        "2026-11-27T09:00:00Z, 2026-11-27T02:10:30Z, , false, made this night",
        "2026-11-27T09:00:00Z, 2026-11-27T02:10:00Z, , false, made at the minute",
        "2026-11-27T09:00:00Z, , , true, there is none",
        "2026-11-27T09:00:00Z, , 2026-11-27T08:30:00Z, false, it failed half an hour ago",
        "2026-11-27T09:00:00Z, , 2026-11-27T08:00:00Z, true, it failed an hour ago",
        "2026-07-27T01:10:00Z, 2026-07-26T02:00:00Z, , true, in summer",
    })
    void isDueOnceANight(Instant now, Instant newest, Instant tried, boolean expected, String because) {
        assertThat(Night.isDue(now, BERLIN, Optional.ofNullable(newest), Optional.ofNullable(tried)))
                .as(because)
                .isEqualTo(expected);
    }
}
