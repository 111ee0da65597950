package dapple.animal;

import dapple.site.NotFoundException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What happened to an animal or a group, and how many they were after it. */
@Service
public class Chronicle {
    private final AnimalRepository animals;
    private final AnimalEventRepository events;

    Chronicle(AnimalRepository animals, AnimalEventRepository events) {
        this.animals = animals;
        this.events = events;
    }

    /** Newest first. */
    @Transactional(readOnly = true)
    public List<Chronicled> of(long siteId, long animalId) {
        Animal animal = animals.findAtSite(siteId, animalId).orElseThrow(NotFoundException::new);
        List<AnimalEvent> oldestFirst = events.of(siteId, List.of(animalId));
        Map<Long, AnimalFacts> related = related(siteId, oldestFirst);
        List<Chronicled> told = new ArrayList<>();
        int count = animal.countBeforeEvents();
        for (AnimalEvent event : oldestFirst) {
            count = event.step().appliedTo(count);
            told.add(new Chronicled(event.facts(), count, event.relatedId().map(related::get)));
        }
        Collections.reverse(told);
        return List.copyOf(told);
    }

    private Map<Long, AnimalFacts> related(long siteId, List<AnimalEvent> told) {
        List<Long> ids = told.stream()
                .flatMap(event -> event.relatedId().stream())
                .distinct()
                .toList();
        return animals.findAllAtSite(siteId, ids).stream()
                .map(Animal::facts)
                .collect(Collectors.toMap(AnimalFacts::id, Function.identity()));
    }
}
