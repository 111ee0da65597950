package dapple.commissioning;

import java.util.List;

/** What was accepted, and the name of who did. */
record ByName(Commissioning commissioning, String name) {
    AcceptanceOnRecord onRecord(List<AcceptanceOnRecord.OnReading> read) {
        return commissioning.onRecord(name, read);
    }

    CommissioningFacts facts() {
        return commissioning.facts(name);
    }
}
