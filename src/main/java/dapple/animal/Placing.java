package dapple.animal;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Begins and ends stays of animals that are locked, and tells that it did. */
@Component
class Placing {
    private final StayRepository stays;
    private final AnimalEventRepository events;
    private final Enclosures enclosures;
    private final ApplicationEventPublisher listeners;
    private final Clock clock;

    Placing(
            StayRepository stays,
            AnimalEventRepository events,
            Enclosures enclosures,
            ApplicationEventPublisher listeners,
            Clock clock) {
        this.stays = stays;
        this.events = events;
        this.enclosures = enclosures;
        this.listeners = listeners;
        this.clock = clock;
    }

    Recorded by(long personId) {
        return new Recorded(clock.instant(), personId);
    }

    HeadCount count(Animal animal) {
        return new HeadCount(
                animal.countBeforeEvents(),
                events.of(animal.siteId(), List.of(animal.id())).stream()
                        .map(AnimalEvent::step)
                        .toList());
    }

    boolean isInUse(Stay stay) {
        return enclosures.get(stay.siteId(), stay.enclosureId()).isInUse();
    }

    StayFacts arrive(Animal animal, long enclosureId, Instant at, String reason, long personId) {
        EnclosureFacts enclosure = enclosures.get(animal.siteId(), enclosureId);
        check(enclosure.retiredAt().isEmpty(), Refusal.OUT_OF_USE, animal);
        check(animal.end().isEmpty(), Refusal.HAS_ENDED, animal);
        check(count(animal).at(at) > 0, Refusal.NOT_HERE_THEN, animal);
        leave(animal, at);
        Stay stay = stays.saveAndFlush(new Stay(animal, enclosureId, at, reason, by(personId)));
        changed(stay, at);
        return stay.facts();
    }

    /** Ends the open stay, if there is one. */
    void leave(Animal animal, Instant at) {
        Optional<Stay> present = stays.open(animal.id());
        boolean endedLater = stays.lastEnd(animal.id()).filter(at::isBefore).isPresent();
        boolean beganLater = present.filter(stay -> !at.isAfter(stay.fromAt())).isPresent();
        check(!endedLater && !beganLater, Refusal.MOVED_LATER, animal);
        present.ifPresent(stay -> {
            stay.end(at);
            stays.saveAndFlush(stay);
            changed(stay, at);
        });
    }

    void changed(Stay stay, Instant from) {
        listeners.publishEvent(new StayChanged(stay.siteId(), stay.enclosureId(), from));
    }

    static void check(boolean holds, Refusal otherwise, Animal animal) {
        if (!holds) {
            throw RefusedException.of(otherwise, animal.facts());
        }
    }
}
