package dapple.rig;

import dapple.lamp.LampFacts;
import dapple.lamp.Lamps;
import dapple.lamp.RetiredFor;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** The lamps of a site, and one of them: what it is and gives, and where it hangs. */
@Controller
@Allowed(Action.SEE_STOCK)
@RequestMapping("/lamps")
class LampPagesController {
    private final Lamps lamps;
    private final FittingRepository fittings;
    private final People people;
    private final BurnHours burnHours;
    private final Clock clock;

    LampPagesController(Lamps lamps, FittingRepository fittings, People people, BurnHours burnHours, Clock clock) {
        this.lamps = lamps;
        this.fittings = fittings;
        this.people = people;
        this.burnHours = burnHours;
        this.clock = clock;
    }

    @GetMapping
    String list(@AuthenticationPrincipal SignedIn me, Model model) {
        Map<Boolean, List<LampFacts>> byUse =
                lamps.all(me.siteId()).stream().collect(Collectors.partitioningBy(LampFacts::isInUse));
        model.addAttribute("inUse", byUse.get(true));
        model.addAttribute("outOfUse", byUse.get(false));
        model.addAttribute(
                "places",
                fittings.places(me.siteId()).stream()
                        .collect(Collectors.toMap(LampPlace::lampId, Function.identity())));
        return "rig/lamps";
    }

    @GetMapping("/{lampId}")
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long lampId, Model model) {
        model.addAttribute("lamp", lamps.get(me.siteId(), lampId));
        model.addAttribute("details", lamps.details(me.siteId(), lampId));
        model.addAttribute("hangs", fittings.place(me.siteId(), lampId));
        model.addAttribute("burnt", burnHours.at(me.siteId(), lampId, clock.instant()));
        model.addAttribute("measured", lamps.measured(me.siteId(), lampId));
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute("reasons", RetiredFor.values());
        return "rig/lamp";
    }
}
