package dapple.reading;

import dapple.people.SignedIn;

/** Who visits, at which site. */
public record Visitor(long siteId, long personId) {
    static Visitor of(SignedIn person) {
        return new Visitor(person.siteId(), person.personId());
    }
}
