package dapple.lamp;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Takes a lamp out of use and back into it. */
@Controller
@Allowed(Action.KEEP_LAMPS)
@RequestMapping("/lamps/{lampId}")
class LampUseController {
    private final LampArranging arranging;

    LampUseController(LampArranging arranging) {
        this.arranging = arranging;
    }

    @PostMapping("/retirement")
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
    String returnToUse(@AuthenticationPrincipal SignedIn me, @PathVariable long lampId) {
        arranging.returnToUse(me.siteId(), lampId);
        return "redirect:/lamps/" + lampId;
    }
}
