package dapple.animal;

import dapple.animal.HeadCount.Step;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import dapple.target.Targets;
import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters animals and groups, and changes what is said of them while their records are open. */
@Service
public class AnimalKeeping {
    private static final long NONE = 0;

    private final AnimalRepository animals;
    private final AnimalEventRepository events;
    private final BodyLengthRepository lengths;
    private final StayRepository stays;
    private final Targets targets;
    private final Placing placing;
    private final ApplicationEventPublisher listeners;

    AnimalKeeping(
            AnimalRepository animals,
            AnimalEventRepository events,
            BodyLengthRepository lengths,
            StayRepository stays,
            Targets targets,
            Placing placing,
            ApplicationEventPublisher listeners) {
        this.animals = animals;
        this.events = events;
        this.lengths = lengths;
        this.stays = stays;
        this.targets = targets;
        this.placing = placing;
        this.listeners = listeners;
    }

    /**
     * Enters one animal.
     *
     * @return its id
     * @throws TakenException if the site has used the accession number
     */
    @Transactional
    public long add(long siteId, AnimalState state, long personId) {
        check(siteId, state, NONE);
        return store(Animal.individual(siteId, state)).id();
    }

    /**
     * Enters a group with its first count.
     *
     * @param number how many animals, above 0
     * @param begun since when, and who counted
     * @throws TakenException if the site has used the accession number
     */
    @Transactional
    public long addGroup(long siteId, AnimalState state, int number, Happened begun) {
        check(siteId, state, NONE);
        Animal group = store(Animal.group(siteId, state, begun.at()));
        Step step = new Step(Happening.ENTERED, begun.at(), number);
        events.saveAndFlush(new AnimalEvent(group, step, begun, placing.by(begun.personId())));
        return group.id();
    }

    /**
     * Changes what is said of an animal.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed it since
     * @throws TakenException if the site has used the accession number
     * @throws RefusedException if the record is closed
     */
    @Transactional
    public void change(long siteId, long animalId, long version, AnimalState state) {
        Animal animal = animals.lockAtSite(siteId, animalId).orElseThrow(NotFoundException::new);
        if (animal.version() != version) {
            throw new ObjectOptimisticLockingFailureException(Animal.class, animalId);
        }
        Placing.check(animal.end().isEmpty(), Refusal.HAS_ENDED, animal);
        check(siteId, state, animalId);
        boolean otherSpecies = animal.facts().speciesId() != state.speciesId();
        animal.become(state);
        store(animal);
        if (otherSpecies) {
            tellThatItWasAnother(animal);
        }
    }

    /** Whoever was taken for another species was it all along. */
    private void tellThatItWasAnother(Animal animal) {
        stays.ofAnimal(animal.siteId(), animal.id())
                .forEach(stay ->
                        listeners.publishEvent(new StayChanged(animal.siteId(), stay.enclosureId(), stay.fromAt())));
    }

    /** Adds a measured length, unless the same is on record. */
    @Transactional
    public void addLength(long siteId, long animalId, BodyLengthFacts length, long personId) {
        Animal animal = animals.lockAtSite(siteId, animalId).orElseThrow(NotFoundException::new);
        Placing.check(animal.end().isEmpty(), Refusal.HAS_ENDED, animal);
        List<BodyLengthFacts> known = lengths.newestFirst(siteId, animalId).stream()
                .map(BodyLength::facts)
                .toList();
        if (!known.contains(length)) {
            lengths.save(new BodyLength(animal, length, placing.by(personId)));
        }
    }

    private void check(long siteId, AnimalState state, long except) {
        if (!targets.speciesById(siteId).containsKey(state.speciesId())) {
            throw new NotFoundException();
        }
        if (animals.isTaken(siteId, state.accessionNumber(), except)) {
            throw new TakenException("the site has used this accession number");
        }
    }

    /** Of two who enter one number in the same moment, the constraint of the database stops the second. */
    private Animal store(Animal animal) {
        try {
            return animals.saveAndFlush(animal);
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has used this accession number by now");
        }
    }
}
