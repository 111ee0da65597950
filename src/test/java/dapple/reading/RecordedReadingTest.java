package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dapple.enclosure.Facing;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RecordedReadingTest {
    private static final long KEEPER = 1;
    private static final long SUPERVISOR = 2;
    private static final Optional<String> AS_TAKEN = Optional.empty();
    private static final Optional<String> CORRECTION = Optional.of("mistyped");

    @Test
    void isReadByWhoTookIt() {
        RecordedReading logged = reading(KEEPER, KEEPER, Optional.empty(), AS_TAKEN);
        assertThat(logged.isReadBy(KEEPER)).isTrue();
        assertThat(logged.isReadBy(SUPERVISOR)).isFalse();
    }

    @Test
    void whoBringsInASheetHasNotReadWhatSomebodyKnownHereDid() {
        RecordedReading imported = reading(KEEPER, SUPERVISOR, Optional.empty(), AS_TAKEN);
        assertThat(imported.isReadBy(SUPERVISOR)).isFalse();
        assertThat(imported.isReadBy(KEEPER)).isTrue();
    }

    @Test
    void whoBringsInASheetHasNotReadWhatSomebodyUnknownHereDid() {
        RecordedReading imported = reading(SUPERVISOR, SUPERVISOR, Optional.of("Odile Renard"), AS_TAKEN);
        assertThat(imported.isReadBy(SUPERVISOR)).isFalse();
    }

    @Test
    void whoPutsItRightStandsForItToo() {
        assertThat(reading(KEEPER, SUPERVISOR, Optional.empty(), CORRECTION).isReadBy(SUPERVISOR))
                .isTrue();
    }

    private static RecordedReading reading(
            long takenBy, long recordedBy, Optional<String> nameOnSheet, Optional<String> corrects) {
        Instant at = Instant.parse("2026-03-02T10:00:00Z");
        return new RecordedReading(
                7,
                3,
                4,
                takenBy,
                recordedBy,
                Quantity.UV_INDEX,
                4.0,
                Facing.STRONGEST,
                true,
                at,
                at,
                nameOnSheet,
                false,
                corrects,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
