package dapple.animal;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.site.ConflictException;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Animals, and which enclosure each is in at any instant. */
@Service
public class Animals {
    private final AnimalRepository animals;
    private final StayRepository stays;
    private final Enclosures enclosures;
    private final Clock clock;

    Animals(AnimalRepository animals, StayRepository stays, Enclosures enclosures, Clock clock) {
        this.animals = animals;
        this.stays = stays;
        this.enclosures = enclosures;
        this.clock = clock;
    }

    @Transactional
    public AnimalFacts add(long siteId, NewAnimal animal) {
        return animals.save(new Animal(siteId, animal)).facts();
    }

    /**
     * Ends the animal's present stay and begins one in the named enclosure, at one instant.
     *
     * @throws ConflictException if the animal has been elsewhere at or after that instant
     */
    @Transactional
    public StayFacts move(long siteId, Arrival arrival) {
        checkIsInUse(enclosures.get(siteId, arrival.enclosureId()), arrival.at());
        Animal animal = animals.lockAtSite(siteId, arrival.animalId()).orElseThrow(NotFoundException::new);
        if (stays.lastEnd(arrival.animalId()).filter(arrival.at()::isBefore).isPresent()) {
            throw new ConflictException("the animal has a stay that ends later");
        }
        stays.open(arrival.animalId()).ifPresent(present -> end(present, arrival.at()));
        return stays.save(new Stay(animal, arrival, clock.instant())).facts();
    }

    private static void checkIsInUse(EnclosureFacts enclosure, Instant at) {
        if (enclosure.retiredAt().filter(retired -> !at.isBefore(retired)).isPresent()) {
            throw new ConflictException("the enclosure is out of use");
        }
    }

    private void end(Stay present, Instant at) {
        if (!at.isAfter(present.fromAt())) {
            throw new ConflictException("the animal has a stay that begins later");
        }
        present.end(at);
        stays.saveAndFlush(present);
    }

    @Transactional(readOnly = true)
    public List<AnimalFacts> all(long siteId) {
        return animals.all(siteId).stream().map(Animal::facts).toList();
    }

    @Transactional(readOnly = true)
    public AnimalFacts get(long siteId, long animalId) {
        return animals.findAtSite(siteId, animalId).map(Animal::facts).orElseThrow(NotFoundException::new);
    }

    /** The stays of an animal, oldest first. */
    @Transactional(readOnly = true)
    public List<StayFacts> staysOf(long siteId, long animalId) {
        return stays.ofAnimal(siteId, animalId).stream().map(Stay::facts).toList();
    }

    @Transactional(readOnly = true)
    public List<AnimalFacts> inEnclosure(long siteId, long enclosureId, Instant at) {
        return stays.inEnclosureAt(siteId, enclosureId, at).stream()
                .map(stay -> stay.facts().animal())
                .toList();
    }

    /** Who is where at an instant, by enclosure. */
    @Transactional(readOnly = true)
    public Map<Long, List<AnimalFacts>> byEnclosure(long siteId, Instant at) {
        return stays.at(siteId, at).stream()
                .map(Stay::facts)
                .collect(Collectors.groupingBy(
                        StayFacts::enclosureId, Collectors.mapping(StayFacts::animal, Collectors.toList())));
    }
}
