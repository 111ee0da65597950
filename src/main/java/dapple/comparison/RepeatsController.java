package dapple.comparison;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import java.time.Clock;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** What waits to be read again blind, and how well people agree who did. Where a site does not ask for it there is no page. */
@Controller
@Allowed(Action.LOG_READINGS)
class RepeatsController {
    /** Of pairs one by one. */
    private static final int SHOWN = 50;

    private final WaitingRepeats waiting;
    private final RepeatsAsked asked;
    private final People people;
    private final Clock clock;

    RepeatsController(WaitingRepeats waiting, RepeatsAsked asked, People people, Clock clock) {
        this.waiting = waiting;
        this.asked = asked;
        this.people = people;
        this.clock = clock;
    }

    @GetMapping("/repeats")
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        if (!me.settings().blindRepeats()) {
            throw new NotFoundException();
        }
        List<RepeatAsked> lately = asked.lately(me.siteId());
        model.addAttribute("waiting", waiting.forOne(me));
        model.addAttribute("agreements", ReadersAgreement.of(lately, clock.instant()));
        model.addAttribute(
                "pairs",
                lately.stream()
                        .filter(repeat -> repeat.second().isPresent())
                        .limit(SHOWN)
                        .toList());
        if (me.may(Action.DECIDE_FINDINGS)) {
            model.addAttribute("names", people.names(me.siteId()));
        }
        return "comparison/repeats";
    }
}
