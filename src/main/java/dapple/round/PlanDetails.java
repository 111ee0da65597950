package dapple.round;

import java.util.List;

/**
 * What is said of a round.
 *
 * @param enclosureIds in the order in which they are walked; at least one
 */
public record PlanDetails(String title, DueDays days, GivenTo givenTo, List<Long> enclosureIds) {
    public PlanDetails {
        enclosureIds = List.copyOf(enclosureIds);
    }
}
