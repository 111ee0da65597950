package dapple.season;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.rig.Rig;
import dapple.rig.Rigs;
import java.time.Clock;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** When the lamps of an enclosure burn over the year, on the screen and as a sheet for whoever sets the timers. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class TimersController {
    private final Enclosures enclosures;
    private final Rigs rigs;
    private final YearOfTimers year;
    private final Clock clock;

    TimersController(Enclosures enclosures, Rigs rigs, YearOfTimers year, Clock clock) {
        this.enclosures = enclosures;
        this.rigs = rigs;
        this.year = year;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}/timers")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        gather(me, enclosureId, model);
        return "season/timers";
    }

    @GetMapping("/enclosures/{enclosureId}/timers/sheet")
    String sheet(@AuthenticationPrincipal SignedIn me, @PathVariable long enclosureId, Model model) {
        gather(me, enclosureId, model);
        return "season/sheet";
    }

    private void gather(SignedIn me, long enclosureId, Model model) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        Rig rig = rigs.in(me.siteId(), enclosure, clock.instant());
        model.addAttribute("enclosure", enclosure);
        model.addAttribute("shown", year.of(me, enclosure, rig));
    }
}
