package dapple.animal;

import java.time.Instant;

/**
 * An animal or a group that was in an enclosure at an instant, or was said to be.
 *
 * @param stay with who entered it and when
 * @param count how many they were, by what is known now
 * @param countThen the same by what had been recorded then
 */
public record Resident(StayRecord stay, int count, int countThen) {
    /** Whether it was there by what is known now. */
    public boolean wasThereAt(Instant at) {
        return stay.withdrawal().isEmpty()
                && !stay.stay().from().isAfter(at)
                && stay.stay().to().filter(end -> !end.isAfter(at)).isEmpty();
    }

    public boolean isRecordedAt(Instant at) {
        return !stay.recordedAt().isAfter(at);
    }

    public AnimalFacts animal() {
        return stay.stay().animal();
    }
}
