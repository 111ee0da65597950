package dapple.commissioning;

/** What was accepted, and the name of who did. */
record ByName(Commissioning commissioning, String name) {
    CommissioningFacts facts() {
        return commissioning.facts(name);
    }
}
