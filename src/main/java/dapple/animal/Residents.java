package dapple.animal;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who lived in an enclosure at an instant, with who said so and when. */
@Service
public class Residents {
    private final StayRepository stays;
    private final AnimalEventRepository events;

    Residents(StayRepository stays, AnimalEventRepository events) {
        this.stays = stays;
        this.events = events;
    }

    /** Those who were there by what is known now, and those who were said to be there then. */
    @Transactional(readOnly = true)
    public List<Resident> at(long siteId, long enclosureId, Instant at) {
        List<Stay> found = stays.onRecord(siteId, enclosureId, at);
        List<Long> ids = found.stream().map(stay -> stay.animal().id()).toList();
        Map<Long, List<AnimalEvent>> byAnimal =
                events.of(siteId, ids).stream().collect(Collectors.groupingBy(AnimalEvent::animalId));
        return found.stream()
                .map(stay -> resident(stay, byAnimal.getOrDefault(stay.animal().id(), List.of()), at))
                .filter(resident -> resident.wasThereAt(at) || resident.isRecordedAt(at))
                .toList();
    }

    private static Resident resident(Stay stay, List<AnimalEvent> all, Instant at) {
        List<AnimalEvent> then =
                all.stream().filter(event -> event.isRecordedBy(at)).toList();
        return new Resident(stay.record(), count(stay.animal(), all, at), count(stay.animal(), then, at));
    }

    private static int count(Animal animal, List<AnimalEvent> events, Instant at) {
        return new HeadCount(
                        animal.countBeforeEvents(),
                        events.stream().map(AnimalEvent::step).toList())
                .at(at);
    }
}
