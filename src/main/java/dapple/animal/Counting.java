package dapple.animal;

import dapple.animal.HeadCount.Step;
import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Records what happens to animals and groups. It may be entered late, as long as no count falls below 0 then or
 * thereafter; what leaves a record without animals closes it.
 */
@Service
public class Counting {
    private static final long NONE = 0;

    private final AnimalRepository animals;
    private final AnimalEventRepository events;
    private final StayRepository stays;
    private final Placing placing;
    private final ApplicationEventPublisher listeners;

    Counting(
            AnimalRepository animals,
            AnimalEventRepository events,
            StayRepository stays,
            Placing placing,
            ApplicationEventPublisher listeners) {
        this.animals = animals;
        this.events = events;
        this.stays = stays;
        this.placing = placing;
        this.listeners = listeners;
    }

    /**
     * Records a birth, death, recount, transfer or release.
     *
     * @param number how many, above 0; at a recount how many were counted
     * @throws RefusedException if the count cannot be, or the record is closed
     */
    @Transactional
    public void record(long siteId, long animalId, Happening kind, int number, Happened how) {
        Animal animal = lock(siteId, animalId);
        if (events.existsByEntryKey(how.key())) {
            return;
        }
        Placing.check(animal.facts().isGroup() || (kind.mayEnd() && number == 1), Refusal.NO_GROUP, animal);
        int change = kind == Happening.BIRTH || kind == Happening.RECOUNT ? number : -number;
        take(animal, new Step(kind, how.at(), change), how, Optional.empty()).under(how.key());
    }

    /**
     * An animal or a new group leaves a group, and begins where the group is at that instant.
     *
     * @return the id of its record
     * @throws TakenException if the site has used the accession number
     */
    @Transactional
    public long split(long siteId, Split split, Happened how) {
        Animal group = lock(siteId, split.groupId());
        Optional<Long> before = events.findByEntryKey(how.key()).flatMap(AnimalEvent::relatedId);
        if (before.isPresent()) {
            return before.get();
        }
        Placing.check(group.facts().isGroup(), Refusal.NO_GROUP, group);
        Animal leaving = store(Animal.splitOff(
                group, split.kind(), group.state().splitOff(split.accessionNumber(), split.name()), how.at()));
        Optional<Stay> where = stays.ofAnimalAt(group.id(), how.at());
        take(group, new Step(Happening.SPLIT_OFF, how.at(), -split.number()), how, Optional.of(leaving))
                .under(how.key());
        take(leaving, new Step(Happening.SPLIT_FROM, how.at(), split.number()), how, Optional.of(group));
        where.filter(placing::isInUse)
                .ifPresent(stay -> placing.arrive(leaving, stay.enclosureId(), how.at(), how.reason(), how.personId()));
        listeners.publishEvent(new GroupSplit(siteId, group.id(), leaving.id(), how.at(), how.personId()));
        return leaving.id();
    }

    /** An animal or a group joins a group of its species; its own record ends. */
    @Transactional
    public void join(long siteId, long animalId, long groupId, Happened how) {
        Animal first = lock(siteId, Math.min(animalId, groupId));
        Animal second = lock(siteId, Math.max(animalId, groupId));
        if (events.existsByEntryKey(how.key())) {
            return;
        }
        Animal joining = animalId < groupId ? first : second;
        Animal group = animalId < groupId ? second : first;
        checkCanJoin(joining, group);
        listeners.publishEvent(new RecordJoins(siteId, joining.facts(), how.at()));
        int number = placing.count(joining).at(how.at());
        take(joining, new Step(Happening.JOINED, how.at(), -number), how, Optional.of(group))
                .under(how.key());
        Placing.check(joining.end().isPresent(), Refusal.COUNT, joining);
        take(group, new Step(Happening.TAKEN_IN, how.at(), number), how, Optional.of(joining));
    }

    private static void checkCanJoin(Animal joining, Animal group) {
        Placing.check(joining.id() != group.id(), Refusal.SAME_RECORD, joining);
        Placing.check(group.facts().isGroup(), Refusal.NO_GROUP, group);
        Placing.check(joining.facts().speciesId() == group.facts().speciesId(), Refusal.OTHER_SPECIES, joining);
    }

    /** Opens a closed record again, with as many animals as it had; it is in no enclosure until it is moved. */
    @Transactional
    public void comeBack(long siteId, long animalId, Happened how) {
        Animal animal = lock(siteId, animalId);
        if (events.existsByEntryKey(how.key())) {
            return;
        }
        Placing.check(animal.end().filter(RecordEnd::canReturn).isPresent(), Refusal.CANNOT_RETURN, animal);
        HeadCount count = placing.count(animal);
        Step end = count.steps().get(count.steps().size() - 1);
        Placing.check(!how.at().isBefore(end.at()), Refusal.CANNOT_RETURN, animal);
        animal.comeBack();
        take(animal, new Step(Happening.RETURNED, how.at(), -end.number()), how, Optional.empty())
                .under(how.key());
    }

    private AnimalEvent take(Animal animal, Step step, Happened how, Optional<Animal> related) {
        Placing.check(animal.end().isEmpty(), Refusal.HAS_ENDED, animal);
        HeadCount before = placing.count(animal);
        HeadCount after = before.with(step);
        if (!after.isPossible()) {
            throw RefusedException.ofCount(animal.facts(), before.at(step.at()));
        }
        AnimalEvent event = new AnimalEvent(animal, step, how, placing.by(how.personId()));
        related.ifPresent(event::with);
        AnimalEvent stored = events.saveAndFlush(event);
        if (after.last() == 0) {
            end(animal, after.steps().get(after.steps().size() - 1));
        }
        return stored;
    }

    /** What comes last ends it, though something earlier may have been entered just now. */
    private void end(Animal animal, Step last) {
        placing.leave(animal, last.at());
        animal.end(last.kind(), last.at());
    }

    /** Of two who enter one number in the same moment, the constraint of the database stops the second. */
    private Animal store(Animal animal) {
        if (animals.isTaken(animal.siteId(), animal.facts().accessionNumber(), NONE)) {
            throw new TakenException("the site has used this accession number");
        }
        try {
            return animals.saveAndFlush(animal);
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has used this accession number by now");
        }
    }

    private Animal lock(long siteId, long animalId) {
        return animals.lockAtSite(siteId, animalId).orElseThrow(NotFoundException::new);
    }
}
