package dapple.animal;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.site.NotFoundException;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Moves animals and groups, and corrects what was said of it. The enclosure and the animals are locked, in this order,
 * so that an animal is in one place, and in none that leaves use meanwhile.
 */
@Service
public class Moving {
    private final AnimalRepository animals;
    private final StayRepository stays;
    private final Enclosures enclosures;
    private final Placing placing;

    Moving(AnimalRepository animals, StayRepository stays, Enclosures enclosures, Placing placing) {
        this.animals = animals;
        this.stays = stays;
        this.enclosures = enclosures;
        this.placing = placing;
    }

    /**
     * Ends the stays of animals and groups in one enclosure and begins others, all at one instant or none.
     *
     * @throws RefusedException if one of them is elsewhere, has moved at or after that instant, or is gone
     */
    @Transactional
    public void move(long siteId, Move move) {
        enclosures.lock(siteId, move.to());
        List<Animal> moved = move.animalIds().stream()
                .distinct()
                .sorted()
                .map(id -> lock(siteId, id))
                .toList();
        for (Animal animal : moved) {
            Optional<Long> from = stays.open(animal.id()).map(Stay::enclosureId);
            Placing.check(from.equals(move.from()), Refusal.NOT_THERE, animal);
            Placing.check(!from.equals(Optional.of(move.to())), Refusal.ALREADY_THERE, animal);
            placing.arrive(animal, move.to(), move.at(), move.reason(), move.personId());
        }
    }

    /** Moves one animal from wherever it is. */
    @Transactional
    public StayFacts move(long siteId, Arrival arrival) {
        enclosures.lock(siteId, arrival.enclosureId());
        Animal animal = lock(siteId, arrival.animalId());
        return placing.arrive(animal, arrival.enclosureId(), arrival.at(), "", arrival.personId());
    }

    /**
     * Withdraws a wrong stay, which stays on record: either it was in another enclosure over the same time, or it was not
     * moved at all, so that the stay before goes on.
     *
     * @throws RefusedException if it is withdrawn already, if a later stay stands on it, or the record is closed
     */
    @Transactional
    public void correct(long siteId, StayCorrection correction) {
        correction.enclosureId().ifPresent(instead -> enclosures.lock(siteId, instead));
        Animal animal = lock(siteId, correction.animalId());
        Stay wrong = stays.findOfAnimal(siteId, correction.animalId(), correction.stayId())
                .orElseThrow(NotFoundException::new);
        Placing.check(!wrong.isWithdrawn(), Refusal.WITHDRAWN, animal);
        Placing.check(animal.end().isEmpty(), Refusal.HAS_ENDED, animal);
        wrong.withdraw(correction.reason(), placing.by(correction.personId()));
        stays.saveAndFlush(wrong);
        placing.changed(wrong, wrong.fromAt());
        correction
                .enclosureId()
                .ifPresentOrElse(instead -> replace(animal, wrong, instead, correction), () -> undo(animal, wrong));
    }

    private void replace(Animal animal, Stay wrong, long enclosureId, StayCorrection correction) {
        Placing.check(enclosureId != wrong.enclosureId(), Refusal.ALREADY_THERE, animal);
        EnclosureFacts instead = enclosures.get(animal.siteId(), enclosureId);
        Placing.check(wasInUse(instead, wrong), Refusal.OUT_OF_USE, animal);
        Stay right = stays.saveAndFlush(
                wrong.inInstead(enclosureId, correction.reason(), placing.by(correction.personId())));
        placing.changed(right, right.fromAt());
    }

    private static boolean wasInUse(EnclosureFacts enclosure, Stay stay) {
        return enclosure.retiredAt().isEmpty()
                || stay.to()
                        .filter(end -> !end.isAfter(enclosure.retiredAt().get()))
                        .isPresent();
    }

    private void undo(Animal animal, Stay wrong) {
        List<Stay> others = stays.ofAnimal(animal.siteId(), animal.id());
        boolean isNewest = others.stream().noneMatch(other -> other.fromAt().isAfter(wrong.fromAt()));
        Placing.check(isNewest, Refusal.NOT_NEWEST, animal);
        others.stream()
                .filter(other -> wrong.to().isEmpty() && other.to().equals(Optional.of(wrong.fromAt())))
                .filter(placing::isInUse)
                .forEach(former -> {
                    former.reopen();
                    stays.saveAndFlush(former);
                    placing.changed(former, wrong.fromAt());
                });
    }

    private Animal lock(long siteId, long animalId) {
        return animals.lockAtSite(siteId, animalId).orElseThrow(NotFoundException::new);
    }
}
