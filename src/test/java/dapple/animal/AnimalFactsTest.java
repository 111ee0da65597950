package dapple.animal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AnimalFactsTest {
    @Test
    void saysNameAndNumber() {
        assertEquals("Basil, 2025-0113", basil("2025-0113").nameAndNumber());
    }

    @Test
    void saysOnceWhatStandsForBoth() {
        assertEquals("Basil", basil("Basil").nameAndNumber());
    }

    private static AnimalFacts basil(String accessionNumber) {
        return new AnimalFacts(1, accessionNumber, "Basil", 2, AnimalKind.INDIVIDUAL, Pigment.NORMAL);
    }
}
