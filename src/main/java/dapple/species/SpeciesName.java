package dapple.species;

/** What a species is called. */
public record SpeciesName(String scientific, String common) {}
