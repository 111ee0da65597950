package dapple.round;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** The rounds of a site, and one of them. */
@Controller
@Allowed(Action.SEE_TODAY)
@RequestMapping("/rounds")
class RoundsController {
    private final Rounds rounds;
    private final RoundArranging arranging;
    private final Coverages coverages;
    private final People people;

    RoundsController(Rounds rounds, RoundArranging arranging, Coverages coverages, People people) {
        this.rounds = rounds;
        this.arranging = arranging;
        this.coverages = coverages;
        this.people = people;
    }

    @GetMapping
    String all(@AuthenticationPrincipal SignedIn me, Model model) {
        List<PlanNow> now = rounds.now(me);
        Set<Long> goingOn = now.stream().map(one -> one.plan().id()).collect(Collectors.toSet());
        model.addAttribute("rounds", MineFirst.of(now, me));
        model.addAttribute(
                "ended",
                arranging.all(me.siteId()).stream()
                        .filter(plan -> !goingOn.contains(plan.id()))
                        .toList());
        model.addAttribute("names", people.names(me.siteId()));
        return "round/rounds";
    }

    @GetMapping("/{planId}")
    String one(@AuthenticationPrincipal SignedIn me, @PathVariable long planId, Model model) {
        model.addAttribute("round", rounds.of(me, planId));
        model.addAttribute("coverage", coverages.of(me, planId));
        model.addAttribute("names", people.names(me.siteId()));
        return "round/round";
    }
}
