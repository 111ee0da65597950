package dapple.animal;

/**
 * What leaves a group.
 *
 * @param number how many; 1 for one animal
 */
public record Split(long groupId, AnimalKind kind, String accessionNumber, String name, int number) {}
