package dapple.animal;

import dapple.site.NotFoundException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Animals and groups, how many they are, and which enclosure each is in at any instant. */
@Service
public class Animals {
    private static final int PAGE_SIZE = 100;

    private final AnimalRepository animals;
    private final StayRepository stays;
    private final AnimalEventRepository events;
    private final BodyLengthRepository lengths;
    private final Moving moving;

    Animals(
            AnimalRepository animals,
            StayRepository stays,
            AnimalEventRepository events,
            BodyLengthRepository lengths,
            Moving moving) {
        this.animals = animals;
        this.stays = stays;
        this.events = events;
        this.lengths = lengths;
        this.moving = moving;
    }

    @Transactional
    public AnimalFacts add(long siteId, NewAnimal animal) {
        return animals.save(Animal.individual(siteId, AnimalState.of(animal))).facts();
    }

    /**
     * Ends the animal's present stay and begins one in the named enclosure, at one instant.
     *
     * @throws RefusedException if the animal has been elsewhere at or after that instant
     */
    @Transactional
    public StayFacts move(long siteId, Arrival arrival) {
        return moving.move(siteId, arrival);
    }

    /** All records, open and closed. */
    @Transactional(readOnly = true)
    public List<AnimalFacts> all(long siteId) {
        return animals.all(siteId).stream().map(Animal::facts).toList();
    }

    /** The open records. */
    @Transactional(readOnly = true)
    public List<AnimalFacts> here(long siteId) {
        return animals.here(siteId).stream().map(Animal::facts).toList();
    }

    /** Those that a list asks for, by accession number, a page at a time. */
    @Transactional(readOnly = true)
    public Page<AnimalDetails> found(long siteId, AnimalFilter filter, int page) {
        return animals.found(
                        siteId,
                        filter.pattern(),
                        filter.speciesId(),
                        filter.enclosureId(),
                        filter.shown().name(),
                        PageRequest.of(page, PAGE_SIZE))
                .map(animal -> animal.details(List.of()));
    }

    @Transactional(readOnly = true)
    public AnimalFacts get(long siteId, long animalId) {
        return find(siteId, animalId).facts();
    }

    /** Everything that is said of an animal. */
    @Transactional(readOnly = true)
    public AnimalDetails details(long siteId, long animalId) {
        return find(siteId, animalId).details(lengthsOf(siteId, animalId));
    }

    private List<BodyLengthFacts> lengthsOf(long siteId, long animalId) {
        return lengths.newestFirst(siteId, animalId).stream()
                .map(BodyLength::facts)
                .toList();
    }

    /** The same, locked until the end of the transaction: what hangs on an animal changes one at a time. */
    @Transactional(propagation = Propagation.MANDATORY)
    public AnimalDetails lock(long siteId, long animalId) {
        return animals.lockAtSite(siteId, animalId)
                .orElseThrow(NotFoundException::new)
                .details(List.of());
    }

    /** What happened to an animal or a group, oldest first. */
    @Transactional(readOnly = true)
    public List<AnimalEventFacts> eventsOf(long siteId, long animalId) {
        return events.of(siteId, List.of(find(siteId, animalId).id())).stream()
                .map(AnimalEvent::facts)
                .toList();
    }

    /** How many animals each record holds at an instant, by record. */
    @Transactional(readOnly = true)
    public Map<Long, Integer> counts(long siteId, Collection<Long> animalIds, Instant at) {
        Map<Long, List<HeadCount.Step>> steps = events.of(siteId, animalIds).stream()
                .collect(Collectors.groupingBy(
                        AnimalEvent::animalId, Collectors.mapping(AnimalEvent::step, Collectors.toList())));
        Map<Long, Integer> counts = new HashMap<>();
        animals.findAllAtSite(siteId, animalIds)
                .forEach(animal -> counts.put(
                        animal.id(),
                        new HeadCount(animal.countBeforeEvents(), steps.getOrDefault(animal.id(), List.of())).at(at)));
        return counts;
    }

    /** How many animals a record held over time, the newest first. */
    @Transactional(readOnly = true)
    public List<Counted> countsOf(long siteId, long animalId) {
        List<HeadCount.Step> steps = events.of(siteId, List.of(animalId)).stream()
                .map(AnimalEvent::step)
                .toList();
        return new HeadCount(find(siteId, animalId).countBeforeEvents(), steps).course();
    }

    /** Whose stays count for an animal, oldest first: its own, and before it left a group the group's. */
    @Transactional(readOnly = true)
    public List<Lineage> lineage(long siteId, long animalId) {
        return lineage(siteId, find(siteId, animalId));
    }

    private List<Lineage> lineage(long siteId, Animal animal) {
        List<Lineage> found = new ArrayList<>();
        Optional<Animal> next = Optional.of(animal);
        Optional<Instant> to = animal.end().map(RecordEnd::at);
        while (next.isPresent()) {
            Animal one = next.get();
            found.add(0, new Lineage(one.id(), one.startsAt(), to));
            to = one.startsAt();
            next = one.splitFromId().map(group -> find(siteId, group));
        }
        return found;
    }

    /** The stays that count for an animal, oldest first; those before it left a group are the group's. */
    @Transactional(readOnly = true)
    public List<StayFacts> history(long siteId, long animalId) {
        return historyOf(siteId, animalId).stays();
    }

    /** The same with the animal, asked for at once. */
    @Transactional(readOnly = true)
    public AnimalHistory historyOf(long siteId, long animalId) {
        List<Chapter> chapters = animals.chapters(siteId, animalId);
        Chapter first = chapters.stream().findFirst().orElseThrow(NotFoundException::new);
        List<Stay> own = chapters.stream().flatMap(one -> one.stay().stream()).toList();
        Animal animal = first.animal();
        List<StayFacts> counted = lineage(siteId, animal).stream()
                .flatMap(piece -> piece.animalId() == animalId
                        ? own.stream().map(Stay::facts)
                        : during(piece, staysOf(siteId, piece.animalId())))
                .toList();
        return new AnimalHistory(animal.facts(), first.species(), animal.state(), animal.end(), counted);
    }

    private static Stream<StayFacts> during(Lineage piece, List<StayFacts> stays) {
        return stays.stream()
                .flatMap(stay -> piece.to().isEmpty()
                        ? Stream.of(stay)
                        : stay.before(piece.to().get()).stream());
    }

    /** The stays of an animal's own record, oldest first. */
    @Transactional(readOnly = true)
    public List<StayFacts> staysOf(long siteId, long animalId) {
        return stays.ofAnimal(siteId, animalId).stream().map(Stay::facts).toList();
    }

    /** The stays of all animals of a site that held at any time in [from, to), oldest first. */
    @Transactional(readOnly = true)
    public List<StayFacts> staysDuring(long siteId, Instant from, Instant to) {
        return stays.during(siteId, from, to).stream().map(Stay::facts).toList();
    }

    /** What was withdrawn over [from, to), oldest first. */
    @Transactional(readOnly = true)
    public List<StayRecord> staysWithdrawn(long siteId, Instant from, Instant to) {
        return stays.withdrawn(siteId, from, to).stream().map(Stay::record).toList();
    }

    /** Everything that was ever said of where an animal was, newest first. */
    @Transactional(readOnly = true)
    public List<StayRecord> stayRecord(long siteId, long animalId) {
        return stays.recordOfAnimal(siteId, animalId).stream().map(Stay::record).toList();
    }

    @Transactional(readOnly = true)
    public List<AnimalFacts> inEnclosure(long siteId, long enclosureId, Instant at) {
        return stays.inEnclosureAt(siteId, enclosureId, at).stream()
                .map(stay -> stay.facts().animal())
                .toList();
    }

    /** When somebody moved into an enclosure or out of it. */
    @Transactional(readOnly = true)
    public List<Instant> turns(long siteId, long enclosureId) {
        return stays.turns(siteId, enclosureId);
    }

    /** Who lives in an enclosure at an instant, with what light is planned by. */
    @Transactional(readOnly = true)
    public List<Occupant> occupants(long siteId, long enclosureId, Instant at) {
        return stays.occupantsAt(siteId, enclosureId, at);
    }

    /** The present stays of animals, by animal; one that is nowhere is missing. */
    @Transactional(readOnly = true)
    public Map<Long, StayFacts> presentStays(long siteId, Collection<Long> animalIds) {
        return stays.openOf(siteId, animalIds).stream()
                .map(Stay::facts)
                .collect(Collectors.toMap(stay -> stay.animal().id(), Function.identity()));
    }

    /** Who is where at an instant, by enclosure. */
    @Transactional(readOnly = true)
    public Map<Long, List<Housed>> byEnclosure(long siteId, Instant at) {
        return stays.at(siteId, at).stream().collect(Collectors.groupingBy(Housed::enclosureId));
    }

    /** Who is in an enclosure at an instant, with their species. */
    @Transactional(readOnly = true)
    public List<Housed> housedIn(long siteId, long enclosureId, Instant at) {
        return stays.at(siteId, enclosureId, at);
    }

    private Animal find(long siteId, long animalId) {
        return animals.findAtSite(siteId, animalId).orElseThrow(NotFoundException::new);
    }
}
