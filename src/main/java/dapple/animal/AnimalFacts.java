package dapple.animal;

/** An animal, or a group kept as a count, as other features see it. */
public record AnimalFacts(
        long id, String accessionNumber, String name, long speciesId, AnimalKind kind, Pigment pigment) {
    public boolean isGroup() {
        return kind == AnimalKind.GROUP;
    }

    /** Whether it has a number of its own; without one an import lets the name stand for it. */
    public boolean isNumbered() {
        return !name.equals(accessionNumber);
    }

    /** Name and number, if it has one of its own. */
    public String nameAndNumber() {
        return isNumbered() ? name + ", " + accessionNumber : name;
    }
}
