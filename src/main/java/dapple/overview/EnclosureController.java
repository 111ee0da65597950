package dapple.overview;

import dapple.animal.Animals;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.reading.Readings;
import dapple.review.Standings;
import java.time.Clock;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One enclosure: how it stands, its points with their newest readings, who lives there. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class EnclosureController {
    private final Standings standings;
    private final Enclosures enclosures;
    private final Readings readings;
    private final Animals animals;
    private final Clock clock;

    EnclosureController(Standings standings, Enclosures enclosures, Readings readings, Animals animals, Clock clock) {
        this.standings = standings;
        this.enclosures = enclosures;
        this.readings = readings;
        this.animals = animals;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        model.addAttribute("standing", standings.of(me.siteId(), enclosureId));
        model.addAttribute("points", enclosures.pointsOf(me.siteId(), enclosureId));
        model.addAttribute("latest", readings.latestIn(me.siteId(), enclosureId));
        model.addAttribute("animals", animals.inEnclosure(me.siteId(), enclosureId, clock.instant()));
        model.addAttribute("staleAfterDays", Standings.STALE_AFTER.toDays());
        return "overview/enclosure";
    }
}
