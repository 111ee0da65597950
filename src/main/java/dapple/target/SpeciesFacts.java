package dapple.target;

/** A species as other features see it. */
public record SpeciesFacts(long id, String scientificName, String commonName) {}
