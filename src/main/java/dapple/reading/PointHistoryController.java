package dapple.reading;

import dapple.animal.AnimalFacts;
import dapple.animal.Animals;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.enclosure.PointHistory;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.SignedIn;
import dapple.site.AuditedThing;
import dapple.site.HistoryHead;
import dapple.species.SpeciesFacts;
import dapple.target.Targets;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Who changed what of a measuring point and when, with whom it serves by name. */
@Controller
@Allowed(Action.AUDIT)
class PointHistoryController {
    private final Enclosures enclosures;
    private final PointHistory points;
    private final Targets targets;
    private final Animals animals;
    private final Histories histories;

    PointHistoryController(
            Enclosures enclosures, PointHistory points, Targets targets, Animals animals, Histories histories) {
        this.enclosures = enclosures;
        this.points = points;
        this.targets = targets;
        this.animals = animals;
        this.histories = histories;
    }

    @GetMapping({
        "/enclosures/{enclosureId}/points/{pointId}/history",
        "/enclosures/{enclosureId}/points/{pointId}/history.csv"
    })
    ModelAndView page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @PathVariable long pointId,
            @RequestParam(defaultValue = "1") int page) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        AuditedThing thing = points.of(me.siteId(), enclosure, pointId)
                .naming(PointHistory.SPECIES, species(me.siteId()))
                .naming(PointHistory.ANIMALS, animals(me.siteId()));
        String point = enclosures.point(me.siteId(), pointId).code();
        HistoryHead head = new HistoryHead(enclosure.code() + " " + point, "rooms", "/enclosures/" + enclosureId);
        return histories.show(me, head, thing, page);
    }

    private Map<Long, String> species(long siteId) {
        return targets.speciesById(siteId).values().stream()
                .collect(Collectors.toMap(SpeciesFacts::id, SpeciesFacts::scientificName));
    }

    private Map<Long, String> animals(long siteId) {
        return animals.all(siteId).stream().collect(Collectors.toMap(AnimalFacts::id, AnimalFacts::name));
    }
}
