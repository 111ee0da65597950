package dapple.animal;

/** One animal, or a group kept as a count. */
public enum AnimalKind {
    INDIVIDUAL,
    GROUP
}
