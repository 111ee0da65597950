package dapple.animal;

/** An animal to add. */
public record NewAnimal(String accessionNumber, String name, long speciesId) {}
