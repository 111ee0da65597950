package dapple.round;

/** A round as it is planned, without its stops. */
public record PlanFacts(long id, long version, String title, DueDays days, GivenTo givenTo) {}
