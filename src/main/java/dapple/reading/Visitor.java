package dapple.reading;

import dapple.people.Action;
import dapple.people.SignedIn;

/**
 * Who visits, at which site.
 *
 * @param supervises whether they may correct and withdraw what others have read
 */
public record Visitor(long siteId, long personId, boolean supervises) {
    public Visitor(long siteId, long personId) {
        this(siteId, personId, false);
    }

    public static Visitor of(SignedIn person) {
        return new Visitor(person.siteId(), person.personId(), person.may(Action.DECIDE_FINDINGS));
    }
}
