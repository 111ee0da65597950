package dapple.people;

/**
 * What has gone of a person.
 *
 * @param name that they had
 * @param signInName that they had
 * @param instead what stands there now
 */
public record Erased(long personId, String name, String signInName, ErasedName instead) {}
