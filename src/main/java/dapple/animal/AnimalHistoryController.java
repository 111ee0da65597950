package dapple.animal;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.SignedIn;
import dapple.site.AuditedThing;
import dapple.site.HistoryHead;
import dapple.target.Targets;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Who changed what of an animal or a group, and when. */
@Controller
@Allowed(Action.AUDIT)
class AnimalHistoryController {
    private final Animals animals;
    private final Targets targets;
    private final Histories histories;

    AnimalHistoryController(Animals animals, Targets targets, Histories histories) {
        this.animals = animals;
        this.targets = targets;
        this.histories = histories;
    }

    @GetMapping({"/animals/{animalId}/history", "/animals/{animalId}/history.csv"})
    ModelAndView page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long animalId,
            @RequestParam(defaultValue = "1") int page) {
        AnimalDetails animal = animals.details(me.siteId(), animalId);
        HistoryHead head = new HistoryHead(animal.facts().name(), "animals", "/animals/" + animalId);
        AuditedThing thing = AuditedThing.of(Animal.class, animalId)
                .naming("speciesId", species(me.siteId()))
                .naming("splitFromId", group(me.siteId(), animal.splitFrom()))
                .wording("kind", "animal-kind.")
                .wording("sex", "sex.")
                .wording("pigment", "pigment.")
                .wording("endKind", "happening.");
        return histories.show(me, head, thing, page);
    }

    private Map<Long, String> species(long siteId) {
        return targets.speciesById(siteId).entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, one -> one.getValue().scientificName()));
    }

    private Map<Long, String> group(long siteId, Optional<Long> groupId) {
        return groupId.map(id -> Map.of(id, animals.get(siteId, id).name())).orElseGet(Map::of);
    }
}
