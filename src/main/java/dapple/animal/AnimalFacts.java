package dapple.animal;

/** An animal, or a group kept as a count, as other features see it. */
public record AnimalFacts(
        long id, String accessionNumber, String name, long speciesId, AnimalKind kind, Pigment pigment) {
    public boolean isGroup() {
        return kind == AnimalKind.GROUP;
    }
}
