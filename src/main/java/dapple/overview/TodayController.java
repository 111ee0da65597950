package dapple.overview;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.review.Standings;
import java.time.Clock;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** What this person has to do now. */
@Controller
@Allowed(Action.SEE_TODAY)
class TodayController {
    private final Standings standings;
    private final Clock clock;

    TodayController(Standings standings, Clock clock) {
        this.standings = standings;
        this.clock = clock;
    }

    @GetMapping("/")
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("today", Today.of(standings.at(me.siteId()), clock.instant()));
        return "overview/today";
    }
}
