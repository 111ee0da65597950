package dapple.animal;

/** An animal as other features see it. */
public record AnimalFacts(long id, String accessionNumber, String name, long speciesId) {}
