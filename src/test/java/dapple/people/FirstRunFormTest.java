package dapple.people;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FirstRunFormTest {
    @Test
    void choosesTheZoneOfTheMachine() {
        assertEquals("Europe/Berlin", FirstRunForm.zoneOf(ZoneId.of("Europe/Berlin")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTC", "Etc/UTC", "GMT", "Z"})
    void namesUtcAsTheListDoes(String machine) {
        assertEquals("UTC", FirstRunForm.zoneOf(ZoneId.of(machine)));
    }
}
