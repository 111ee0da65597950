package dapple.overview;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.review.EnclosureNow;
import dapple.review.Standings;
import dapple.site.Sites;
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
    private final Sites sites;

    EnclosureController(Standings standings, Sites sites) {
        this.standings = standings;
        this.sites = sites;
    }

    @GetMapping("/enclosures/{enclosureId}")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        EnclosureNow enclosure = standings.of(me.siteId(), enclosureId);
        model.addAttribute("standing", enclosure.standing());
        model.addAttribute("points", enclosure.points());
        model.addAttribute("rows", enclosure.rows());
        model.addAttribute("animals", enclosure.animals());
        model.addAttribute("staleAfterDays", sites.settings(me.siteId()).staleAfterDays());
        return "overview/enclosure";
    }
}
