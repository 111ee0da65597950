package dapple.species;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.Histories;
import dapple.people.SignedIn;
import dapple.site.AuditedThing;
import dapple.site.HistoryHead;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Who gave a species which names, and when. */
@Controller
@Allowed(Action.AUDIT)
class SpeciesHistoryController {
    private final SpeciesKeeping species;
    private final Histories histories;

    SpeciesHistoryController(SpeciesKeeping species, Histories histories) {
        this.species = species;
        this.histories = histories;
    }

    @GetMapping({"/targets/{speciesId}/history", "/targets/{speciesId}/history.csv"})
    ModelAndView page(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long speciesId,
            @RequestParam(defaultValue = "1") int page) {
        String name = species.get(me.siteId(), speciesId).scientificName();
        HistoryHead head = new HistoryHead(name, "targets", "/targets/" + speciesId);
        return histories.show(me, head, AuditedThing.of(Species.class, speciesId), page);
    }
}
