package dapple.round;

import java.util.Optional;

/**
 * What was said of one walk.
 *
 * @param version for forms: 0 while nothing was said
 * @param givenTo empty: to whom the round is given
 */
public record WalkSaid(long version, Optional<GivenTo> givenTo, Optional<Begun> begun, Optional<Excuse> excuse) {
    static final WalkSaid NOTHING = new WalkSaid(0, Optional.empty(), Optional.empty(), Optional.empty());
}
