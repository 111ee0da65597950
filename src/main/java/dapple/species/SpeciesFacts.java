package dapple.species;

/**
 * A species as other features see it.
 *
 * @param version the version that a form about it is made from
 */
public record SpeciesFacts(long id, String scientificName, String commonName, long version) {}
