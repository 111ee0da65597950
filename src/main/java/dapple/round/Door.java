package dapple.round;

import dapple.enclosure.EnclosureFacts;
import java.util.Optional;

/**
 * An enclosure as the form of a round shows it.
 *
 * @param place as typed: where it comes in the walk; empty: where its room and door come
 */
record Door(EnclosureFacts enclosure, boolean isWalked, String place) {
    private static final String NUMBER = "[1-9][0-9]{0,3}";

    public boolean isWrong() {
        return !place.isEmpty() && !place.matches(NUMBER);
    }

    Optional<Integer> number() {
        return Optional.of(place).filter(typed -> typed.matches(NUMBER)).map(Integer::valueOf);
    }
}
