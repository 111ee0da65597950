package dapple.overview;

import dapple.comparison.Upkeeping;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.practice.MeterStandings;
import dapple.review.Desks;
import dapple.review.Filter;
import dapple.rig.Rigs;
import dapple.round.MineFirst;
import dapple.round.PlanNow;
import dapple.round.Rounds;
import java.time.Clock;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** What this person has to do now. */
@Controller
@Allowed(Action.SEE_TODAY)
class TodayController {
    private final Desks desks;
    private final Rigs rigs;
    private final Rounds rounds;
    private final MeterStandings meters;
    private final Upkeeping upkeeping;
    private final Clock clock;

    TodayController(Desks desks, Rigs rigs, Rounds rounds, MeterStandings meters, Upkeeping upkeeping, Clock clock) {
        this.desks = desks;
        this.rigs = rigs;
        this.rounds = rounds;
        this.meters = meters;
        this.upkeeping = upkeeping;
        this.clock = clock;
    }

    @GetMapping("/")
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute(
                "today",
                Today.of(
                        desks.at(me, Filter.NONE), rigs.lastLightChanges(me.siteId()), me.personId(), clock.instant()));
        model.addAttribute(
                "rounds",
                MineFirst.of(rounds.now(me).stream().filter(PlanNow::isOpen).toList(), me));
        model.addAttribute("meters", me.may(Action.KEEP_METERS) ? meters.due(me.siteId(), me.zone()) : List.of());
        model.addAttribute("upkeep", upkeeping.today(me));
        return "overview/today";
    }
}
