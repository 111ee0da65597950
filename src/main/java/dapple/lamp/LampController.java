package dapple.lamp;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One lamp: what it is and gives, whether it is in use. */
@Controller
@RequestMapping("/lamps/{lampId}")
class LampController {
    private final Lamps lamps;
    private final LampArranging arranging;
    private final LampMeasuring measuring;
    private final People people;

    LampController(Lamps lamps, LampArranging arranging, LampMeasuring measuring, People people) {
        this.lamps = lamps;
        this.arranging = arranging;
        this.measuring = measuring;
        this.people = people;
    }

    @GetMapping
    @Allowed(Action.SEE_STOCK)
    String page(@AuthenticationPrincipal SignedIn me, @PathVariable long lampId, Model model) {
        model.addAttribute("lamp", lamps.get(me.siteId(), lampId));
        model.addAttribute("details", arranging.get(me.siteId(), lampId));
        model.addAttribute("measured", measuring.all(me.siteId(), lampId));
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute("reasons", RetiredFor.values());
        return "lamp/lamp";
    }

    @PostMapping("/retirement")
    @Allowed(Action.KEEP_LAMPS)
    String retire(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long lampId,
            @RequestParam(defaultValue = "WORN_OUT") RetiredFor why) {
        try {
            arranging.retire(me.siteId(), lampId, why);
            return "redirect:/lamps/" + lampId;
        } catch (StillFittedException fitted) {
            return "redirect:/lamps/" + lampId + "?fitted";
        }
    }

    @PostMapping("/return")
    @Allowed(Action.KEEP_LAMPS)
    String returnToUse(@AuthenticationPrincipal SignedIn me, @PathVariable long lampId) {
        arranging.returnToUse(me.siteId(), lampId);
        return "redirect:/lamps/" + lampId;
    }
}
