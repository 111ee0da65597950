package dapple.housing;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.order.Mates;
import dapple.order.Needs;
import dapple.order.NeedsConflict;
import dapple.site.Given;
import dapple.species.SpeciesFacts;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Who can be moved from a place, what each needs, and whom each would not go with. */
@Component
class MoveChoices {
    private final Animals animals;
    private final Targets targets;
    private final Mates mates;

    MoveChoices(Animals animals, Targets targets, Mates mates) {
        this.animals = animals;
        this.targets = targets;
        this.mates = mates;
    }

    /** Those in an enclosure, or without one those that are nowhere. */
    @Transactional(readOnly = true)
    public List<MoveChoice> at(long siteId, Optional<Long> enclosureId, Instant now) {
        List<AnimalFacts> found = enclosureId
                .map(enclosure -> animals.inEnclosure(siteId, enclosure, now))
                .orElseGet(() -> nowhere(siteId, now));
        if (found.isEmpty()) {
            return List.of();
        }
        Map<Long, SpeciesFacts> species = targets.speciesById(siteId);
        Map<Long, Target> inForce = targets.inForce(siteId, speciesOf(found), now);
        Map<Long, Integer> counts =
                animals.counts(siteId, found.stream().map(AnimalFacts::id).toList(), now);
        Map<Long, Needs> needs = mates.needs(siteId, found, now).stream()
                .collect(Collectors.toMap(one -> one.animal().id(), Function.identity()));
        return found.stream()
                .map(animal -> new MoveChoice(
                        animal,
                        counts.getOrDefault(animal.id(), 0),
                        Given.of(species.get(animal.speciesId())),
                        Optional.ofNullable(inForce.get(animal.speciesId())),
                        Given.of(needs.get(animal.id()))))
                .toList();
    }

    private static Set<Long> speciesOf(List<AnimalFacts> found) {
        return found.stream().map(AnimalFacts::speciesId).collect(Collectors.toSet());
    }

    private List<AnimalFacts> nowhere(long siteId, Instant now) {
        Set<Long> somewhere = animals.byEnclosure(siteId, now).values().stream()
                .flatMap(List::stream)
                .map(housed -> housed.animal().id())
                .collect(Collectors.toSet());
        return animals.here(siteId).stream()
                .filter(animal -> !somewhere.contains(animal.id()))
                .toList();
    }

    /** Whom they would not go with: those who live there, and one another where they come from nowhere. */
    @Transactional(readOnly = true)
    public List<NeedsConflict> conflicts(long siteId, List<MoveChoice> moving, MoveForm form, Instant now) {
        List<Needs> coming = moving.stream().map(MoveChoice::needs).toList();
        List<Needs> there = mates.needs(siteId, animals.inEnclosure(siteId, Given.of(form.to()), now), now);
        List<NeedsConflict> found = new ArrayList<>(NeedsConflict.between(coming, there));
        if (form.fromEnclosure().isEmpty()) {
            NeedsConflict.between(coming, coming).stream()
                    .filter(pair ->
                            pair.one().animal().id() < pair.other().animal().id())
                    .forEach(found::add);
        }
        return found;
    }
}
