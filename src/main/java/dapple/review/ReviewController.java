package dapple.review;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Every enclosure that needs somebody, worst and oldest first. */
@Controller
@Allowed(Action.SEE_REVIEW)
@RequestMapping("/review")
class ReviewController {
    private final Standings standings;

    ReviewController(Standings standings) {
        this.standings = standings;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("review", new ReviewList(standings.at(me.siteId())));
        return "review/review";
    }

    /** The part of the page that renews itself while it is open. */
    @GetMapping("/standing")
    String standing(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("review", new ReviewList(standings.at(me.siteId())));
        return "review/review :: standing";
    }
}
