package dapple.animal;

/** An animal, or a group kept as a count, as other features see it. */
public record AnimalFacts(
        long id, String accessionNumber, String name, long speciesId, AnimalKind kind, Pigment pigment) {
    public boolean isGroup() {
        return kind == AnimalKind.GROUP;
    }

    /** Name and number; once where an import let the name stand for the number. */
    public String nameAndNumber() {
        return name.equals(accessionNumber) ? name : name + ", " + accessionNumber;
    }
}
