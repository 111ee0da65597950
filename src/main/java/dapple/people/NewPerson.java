package dapple.people;

/** A person to add, with their first password. */
public record NewPerson(String signInName, String name, String password) {}
